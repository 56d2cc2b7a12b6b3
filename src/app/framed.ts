/** Whether a page of another site holds this one in a frame. It could then lay pictures over the buttons and guide the maker's clicks. */
export function isFramedElsewhere(): boolean {
  try {
    return window.top?.location.origin !== location.origin;
  } catch {
    // The browser does not even let us look.
    return true;
  }
}
