import { craftKnives } from '../prose/knives.ts'
import type { Tool } from './tool.ts'

/** What paper is cut, scored, folded and measured with. */
export const cuttingTools: readonly Tool[] = [
  { name: 'knife', work: ['cut'] },
  {
    name: 'craft knife',
    words: craftKnives,
    is: ['knife'],
    work: ['cut'],
  },
  { name: 'scalpel', is: ['knife', 'craft knife'], work: ['cut'] },
  { name: 'rotary cutter', work: ['cut'] },
  { name: 'circle cutter', work: ['cut'] },
  { name: 'wire cutter', work: ['cut'] },
  { name: 'scissors', words: ['pair of scissors', 'snips', 'shears', 'paper scissors'], work: ['cut'] },
  { name: 'pinking shears', words: ['deckle scissors', 'fancy scissors'], is: ['scissors'], work: ['cut'] },
  { name: 'trimmer', work: ['cut'] },
  {
    name: 'paper trimmer',
    words: ['rotary trimmer', 'sliding trimmer', 'paper cutter'],
    is: ['trimmer'],
    work: ['cut'],
  },
  { name: 'guillotine', is: ['trimmer', 'paper trimmer'], work: ['cut'] },
  { name: 'cutting mat', words: ['mat', 'self-healing mat', 'craft mat'], work: ['cut'] },
  { name: 'ruler', words: ['straight edge', 'straightedge'], work: ['line'] },
  {
    name: 'steel ruler',
    words: ['metal ruler', 'safety ruler', 'steel rule'],
    is: ['ruler'],
    work: ['line'],
  },
  { name: 'set square', words: ['T-square', 'try square', 'quilting ruler'], is: ['ruler'], work: ['line'] },
  { name: 'tape measure', words: ['measuring tape'], work: ['line'] },
  { name: 'protractor', work: ['line'] },
  { name: 'compasses', words: ['pair of compasses', 'compass'], work: ['mark'] },
  { name: 'scoring board', words: ['scoreboard', 'score board', 'scoring mat'], work: ['score'] },
  {
    name: 'scoring tool',
    words: ['stylus', 'scoring stylus', 'embossing stylus', 'ball tool', 'empty ballpoint pen', 'scorer'],
    work: ['score'],
  },
  {
    name: 'bone folder',
    words: ['folding bone', 'folding tool', 'paper folder', 'creaser', 'burnisher'],
    work: ['fold'],
  },
  {
    name: 'pricking tool',
    words: ['paper piercer', 'piercing tool', 'awl', 'pricker', 'bradawl'],
    work: ['pierce'],
  },
  { name: 'needle', words: ['sewing needle', 'darning needle', 'blunt needle'], work: ['pierce'] },
  { name: 'punch', work: ['punch'] },
  {
    name: 'hole punch',
    words: ['hole puncher', 'paper punch', 'single-hole punch'],
    is: ['punch'],
    work: ['punch'],
  },
  { name: 'corner punch', words: ['corner rounder', 'corner chomper'], is: ['punch'], work: ['punch'] },
  {
    name: 'shape punch',
    words: ['craft punch', 'border punch', 'circle punch'],
    is: ['punch'],
    work: ['punch', 'cut'],
  },
  { name: 'screw punch', is: ['punch', 'hole punch'], work: ['punch', 'pierce'] },
  { name: 'die', words: ['cutting die', 'letter die', 'metal die'], work: ['dieCut'] },
  {
    name: 'die-cutting machine',
    words: ['die cutter', 'embossing machine', 'dies and machine', 'letter dies and machine'],
    is: ['die'],
    work: ['dieCut'],
  },
  { name: 'embossing folder', work: ['dieCut'] },
]
