import type { ScreenWords } from '../../screen/words.ts'
import type { Wording } from '../../wording/wording.ts'

/** What the page says while it runs. It puts the times in itself, so each stands here for itself. */
export const screenWords = ({ say }: Wording): ScreenWords => ({
  left: say('screen.left', { time: '{time}' }),
  over: say('screen.over', { time: '{time}' }),
  atStep: say('screen.at-step', { time: '{time}' }),
  gone: say('screen.gone', { gone: '{gone}' }),
  goneToGo: say('screen.gone-to-go', { gone: '{gone}', left: '{left}' }),
  dryIn: say('screen.dry-in', { step: '{step}', time: '{time}' }),
  clockStarts: say('screen.clock-starts'),
  pause: say('screen.pause'),
  goOn: say('screen.go-on'),
  minutes: say('handout.minutes', { minutes: '{minutes}' }),
  hours: say('handout.hours', { hours: '{hours}' }),
  hoursMinutes: say('handout.hours-minutes', { hours: '{hours}', minutes: '{minutes}' }),
})
