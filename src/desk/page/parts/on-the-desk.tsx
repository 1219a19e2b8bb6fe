import type { Keeper } from '../keeping/keeper.ts'
import { Pages } from '../looking/pages.tsx'
import { Sizes } from '../looking/sizes.tsx'
import { Space } from '../looking/space.tsx'
import { Steps } from '../looking/steps.tsx'
import type { OwnDesk } from '../new-desk.ts'
import { ClassView } from './class-view.tsx'
import { sheetId, slipId } from './views.tsx'

/** What lies beside the writing. */
export function OnTheDesk({ desk, keeper }: { readonly desk: OwnDesk; readonly keeper: Keeper }) {
  const { value: view } = desk.view
  return (
    <div class="table-sheet" role="tabpanel" id={sheetId} aria-labelledby={slipId(view)}>
      {view === 'pages' && <Pages desk={desk} />}
      {view === 'steps' && <Steps desk={desk} />}
      {view === 'space' && <Space desk={desk} />}
      {view === 'sizes' && <Sizes desk={desk} />}
      {view === 'class' && <ClassView desk={desk} keeper={keeper} />}
    </div>
  )
}
