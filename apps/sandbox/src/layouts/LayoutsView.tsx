export function LayoutsView(_: { booted: unknown; theme: string; wide: boolean }) {
  return <main />;
}
