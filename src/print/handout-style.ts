/** The look of the handout as a page of its own: large type, one column, pictures as wide as a phone. */
export const PRINTED_STYLE = [
  ':root{color-scheme:light}',
  'body{margin:0;background:#fdfcf8;color:#22262a;font:400 1.125rem/1.5 Inter,system-ui,sans-serif}',
  'main{max-width:42rem;margin:0 auto;padding:1.25rem}',
  'h1{font-size:1.9rem;line-height:1.2}h2{margin-top:2.5rem;font-size:1.4rem}h3{margin:0 0 .5rem;font-size:1.15rem}',
  'svg,img{display:block;max-width:100%;height:auto;margin:1rem 0}svg{overflow:visible}',
  'ol{padding-left:1.5rem}ol>li{margin:0 0 2rem}',
  '.marks{display:flex;flex-wrap:wrap;gap:.25rem 1.5rem;padding:0;list-style:none}.marks b{font-size:1.5rem}',
  '.note,.care{margin:.75rem 0;padding:.25rem .75rem;border-left:3px solid #8a8577}.care{border-color:#9a3f0f;background:#fbeade}',
  'ul{padding-left:1.25rem}table{width:100%;font-size:1rem;border-collapse:collapse}th,td{padding:.4rem .75rem .4rem 0;text-align:left;border-bottom:1px solid #d3cec2}',
].join('');
