import cautions from './en-gb/cautions.json' with { type: 'json' }
import chart from './en-gb/chart.json' with { type: 'json' }
import klass from './en-gb/class.json' with { type: 'json' }
import figures from './en-gb/figures.json' with { type: 'json' }
import handout from './en-gb/handout.json' with { type: 'json' }
import kit from './en-gb/kit.json' with { type: 'json' }
import measures from './en-gb/measures.json' with { type: 'json' }
import motion from './en-gb/motion.json' with { type: 'json' }
import names from './en-gb/names.json' with { type: 'json' }
import screen from './en-gb/screen.json' with { type: 'json' }
import sheets from './en-gb/sheets.json' with { type: 'json' }
import text from './en-gb/text.json' with { type: 'json' }

/** British English: the messages that all other languages are complete against. */
export const enGB = {
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
