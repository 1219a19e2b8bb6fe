/**
 * The one program of the index: shows the lessons that have all the words that are looked for. Without it all of them
 * are shown, and there is no field to look for words in.
 */
export const searchScript = `(() => {
const finder = document.querySelector('.finder')
const field = finder.querySelector('input')
const found = finder.querySelector('output')
const lessons = [...document.querySelectorAll('.lessons > li')]
const plain = (text) => text.normalize('NFD').replace(/\\p{M}/gu, '').toLowerCase()
const show = () => {
  const words = plain(field.value).match(/[\\p{L}\\p{N}]+/gu) ?? []
  let shown = 0
  for (const lesson of lessons) {
    const has = words.every((word) => (' ' + lesson.dataset.words).includes(' ' + word))
    lesson.hidden = !has
    if (has) shown++
  }
  found.value = words.length === 0 ? '' : shown === 0 ? 'No lesson has these words' : shown === 1 ? '1 lesson' : shown + ' lessons'
}
field.addEventListener('input', show)
finder.addEventListener('submit', (event) => event.preventDefault())
finder.hidden = false
show()
})()`
