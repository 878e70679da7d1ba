import { SMALL } from '../../drawing/index.js'

/** A picture in a page: heading and caption of its figure name it, and what they say it does not say again. */
export function inPage(svg: string, id: string): string {
  const named = svg.replace(/<svg( role="img")?/, `<svg role=img aria-labelledby=${id}-title aria-describedby=${id}-text`)
  return named === svg
    ? svg
    : withoutAnswer(named.replace(/ role="img" aria-labelledby="[^"]*-picture-title" aria-describedby="[^"]*"/, ''))
        .replace(/<title[\s\S]*?<\/title>\s*/, '')
        .replace(/<desc[\s\S]*?<\/desc>\s*/, '')
        .replaceAll(/<!--[\s\S]*?-->\s*/g, '')
        .replaceAll(/<\/g>\n<g>/g, '')
        .replaceAll(/="([\w.#%,+-]+)"(?=[ >])/g, '=$1')
        .replaceAll(/ (\w+)="([\w.#%,+-]+)"\/>/g, ' $1=$2 />')
        .trimEnd()
}

/** Height of a line of the answer in a drawing. */
const ANSWER_LINE = 17

/** A drawing without its first and its last lines: the answer stands above it in a page, and results are in the table below it. */
function withoutAnswer(svg: string): string {
  const [whole, lines] = /<!-- answer -->\n(<g>.*?<\/g>)\n/.exec(svg) ?? []
  if (whole === undefined) return svg
  const cut = ANSWER_LINE * (lines as string).split('<text ').slice(1).length
  const [results = '', first] = /<!-- results -->\n<g><text x="\d+" y="([\d.]+)".*?<\/g>\n(?=<\/svg>)/.exec(svg) ?? []
  return svg
    .replace(whole, '')
    .replace(results, '')
    .replace(/viewBox="0 0 (\d+) (\d+)"/, (_, width: string, height: string) => {
      const end = first === undefined ? Number(height) : Math.ceil(Number(first) - SMALL)
      return `viewBox="0 ${cut} ${width} ${end - cut}"`
    })
}
