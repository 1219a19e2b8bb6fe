/** The share of its size that the type of a full slide may shrink to; what is still too long is scrolled. */
const [smallest, step] = [0.45, 0.05]

/** Sets the words of a slide as large as they go into it. */
export function fitSlide(slide: HTMLElement): void {
  for (let share = 1; share >= smallest; share -= step) {
    slide.style.setProperty('--fit', share.toFixed(2))
    const [high, wide] = [slide.scrollHeight - slide.clientHeight, slide.scrollWidth - slide.clientWidth]
    if (high <= 1 && wide <= 1) return
  }
}

/** Goes on down a slide that is longer than the screen; gives whether there was anything to go on to. */
export function scrolled(slide: HTMLElement, way: 1 | -1): boolean {
  const { scrollTop, scrollHeight, clientHeight } = slide
  const rest = way > 0 ? scrollHeight - clientHeight - scrollTop : scrollTop
  if (rest <= 2) return false
  slide.scrollBy({ top: way * 0.8 * clientHeight })
  return true
}
