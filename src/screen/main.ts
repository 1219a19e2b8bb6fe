import { stayAwake } from './awake.ts'
import { computerClock } from './clock.ts'
import { keptIn } from './kept.ts'
import { startScreen } from './page.ts'
import { partsOf } from './parts.ts'
import type { ScreenTold } from './told.ts'

/** The page as it is written shows all slides below each other; this shows them one at a time. */
const parts = partsOf(document)
const told = JSON.parse(document.getElementById('told')?.textContent ?? '') as ScreenTold
startScreen(
  parts,
  told,
  computerClock,
  keptIn(() => sessionStorage, told.title),
)
stayAwake((awake) => {
  parts.root.dataset.awake = String(awake)
})
