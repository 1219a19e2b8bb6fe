import cautions from './de/cautions.json' with { type: 'json' }
import chart from './de/chart.json' with { type: 'json' }
import klass from './de/class.json' with { type: 'json' }
import figures from './de/figures.json' with { type: 'json' }
import handout from './de/handout.json' with { type: 'json' }
import kit from './de/kit.json' with { type: 'json' }
import measures from './de/measures.json' with { type: 'json' }
import motion from './de/motion.json' with { type: 'json' }
import names from './de/names.json' with { type: 'json' }
import screen from './de/screen.json' with { type: 'json' }
import sheets from './de/sheets.json' with { type: 'json' }
import text from './de/text.json' with { type: 'json' }

/** German. */
export const de = {
  cautions,
  chart,
  class: klass,
  figures,
  handout,
  kit,
  measures,
  motion,
  names,
  screen,
  sheets,
  text,
}
