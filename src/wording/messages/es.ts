import cautions from './es/cautions.json' with { type: 'json' }
import chart from './es/chart.json' with { type: 'json' }
import klass from './es/class.json' with { type: 'json' }
import figures from './es/figures.json' with { type: 'json' }
import handout from './es/handout.json' with { type: 'json' }
import kit from './es/kit.json' with { type: 'json' }
import measures from './es/measures.json' with { type: 'json' }
import motion from './es/motion.json' with { type: 'json' }
import names from './es/names.json' with { type: 'json' }
import screen from './es/screen.json' with { type: 'json' }
import sheets from './es/sheets.json' with { type: 'json' }
import text from './es/text.json' with { type: 'json' }

/** Spanish. */
export const es = {
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
