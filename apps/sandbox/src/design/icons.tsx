/** Small line drawings for buttons; they carry no meaning alone, the button's name does. */
const PATHS = {
  undo: "M5 4 2 7l3 3M2 7h7a4 4 0 0 1 0 8H7",
  redo: "M11 4l3 3-3 3M14 7H7a4 4 0 0 0 0 8h2",
  menu: "M2 4h12M2 8h12M2 12h12",
  close: "M4 4l8 8M12 4l-8 8",
  down: "M4 6l4 4 4-4",
  right: "M6 4l4 4-4 4",
  left: "M10 4 6 8l4 4",
  play: "M5 3l8 5-8 5z",
  pause: "M5 3v10M11 3v10",
  markBack: "M3 2v12M3 3h5l-1.5 2L8 7H3M14 11H8M10 9l-2 2 2 2",
  markOn: "M3 2v12M3 3h5l-1.5 2L8 7H3M8 11h6M12 9l2 2-2 2",
  loop: "M3 7V6a2 2 0 0 1 2-2h8M11 2l2 2-2 2M13 9v1a2 2 0 0 1-2 2H3M5 14l-2-2 2-2",
  measure: "M3 3v10M13 3v10M5 8h6M7 6L5 8l2 2M9 6l2 2-2 2",
  stop: "M4 4h8v8H4z",
  open: "M2 13V4h4l1.5 2H14v7z",
  save: "M8 2v8M5 7l3 3 3-3M3 13h10",
  link: "M7 9l2-2M6 6l2-2a2.8 2.8 0 0 1 4 4l-2 2M10 10l-2 2a2.8 2.8 0 0 1-4-4l2-2",
  plus: "M8 3v10M3 8h10",
  minus: "M3 8h10",
  fit: "M2 5V3h3M14 5V3h-3M2 11v2h3M14 11v2h-3M5 8h6",
  bin: "M3 4h10M6 4V2h4v2M4 4l1 10h6l1-10",
  light: "M8 5a3 3 0 1 0 0 6 3 3 0 0 0 0-6zM8 1v1.5M8 13.5V15M1 8h1.5M13.5 8H15M3 3l1 1M12 12l1 1M13 3l-1 1M4 12l-1 1",
  dark: "M13 10A6 6 0 0 1 6 3a5.5 5.5 0 1 0 7 7z",
  views: "M2 3h12v4H2zM2 9h5v4H2zM9 9h5v4H9z",
  rig: "M2 3v10M14 3v10M2 5q6 3 12 0M2 6q6 7 12 0",
} as const;
export type IconName = keyof typeof PATHS;

export function Icon({ name, size = 16 }: { name: IconName; size?: number }) {
  return (
    <svg
      width={size}
      height={size}
      viewBox="0 0 16 16"
      fill="none"
      stroke="currentColor"
      strokeWidth="1.5"
      aria-hidden="true"
    >
      <path d={PATHS[name]} strokeLinecap="round" strokeLinejoin="round" />
    </svg>
  );
}
