/** ln(2π) ÷ 2 [-]. */
export const HALF_LOG_2PI = 0.9189385332046727;
