import cautions from './fr/cautions.json' with { type: 'json' }
import chart from './fr/chart.json' with { type: 'json' }
import klass from './fr/class.json' with { type: 'json' }
import figures from './fr/figures.json' with { type: 'json' }
import handout from './fr/handout.json' with { type: 'json' }
import kit from './fr/kit.json' with { type: 'json' }
import measures from './fr/measures.json' with { type: 'json' }
import motion from './fr/motion.json' with { type: 'json' }
import names from './fr/names.json' with { type: 'json' }
import screen from './fr/screen.json' with { type: 'json' }
import sheets from './fr/sheets.json' with { type: 'json' }
import text from './fr/text.json' with { type: 'json' }

/** French. */
export const fr = {
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
