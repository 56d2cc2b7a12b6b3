/** `frontFlap` as a maker says it: `front flap`; ways in the plane of the net as hands see them, `upFlap` the `top flap`. */
export const panelWords = (panel: string): string =>
  panel
    .replace(/([a-z])([A-Z0-9])/g, '$1 $2')
    .toLowerCase()
    .replace(/\b(up|down)(?= )/g, (way) => (way === 'up' ? 'top' : 'bottom'));
