import cautions from './en-us/cautions.json' with { type: 'json' }
import chart from './en-us/chart.json' with { type: 'json' }
import klass from './en-us/class.json' with { type: 'json' }
import figures from './en-us/figures.json' with { type: 'json' }
import handout from './en-us/handout.json' with { type: 'json' }
import kit from './en-us/kit.json' with { type: 'json' }
import measures from './en-us/measures.json' with { type: 'json' }
import motion from './en-us/motion.json' with { type: 'json' }
import names from './en-us/names.json' with { type: 'json' }
import screen from './en-us/screen.json' with { type: 'json' }
import sheets from './en-us/sheets.json' with { type: 'json' }
import text from './en-us/text.json' with { type: 'json' }

/** American English: what is spelt otherwise than in British English, and nothing else. */
export const enUS = {
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
