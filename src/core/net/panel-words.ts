/** `frontFlap` as a maker says it: `front flap`. */
export const panelWords = (panel: string): string =>
  panel.replace(/([a-z])([A-Z0-9])/g, '$1 $2').toLowerCase();
