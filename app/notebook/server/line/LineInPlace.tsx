import { takeOffWhereBuilt } from '../../../../lib/drawing/builtFence.ts'
import { LookAround } from '../../../ui/look/LookAround.tsx'
import { LineDrawing } from '../LineDrawing.tsx'
import type { Opened } from '../opened.ts'
import { drawnStandings, type SinceSigned } from '../statusOf.ts'
import { ItemLook } from './ItemLook.tsx'
import { lookAddresses, postsOneByOne } from './lookAddress.ts'
import { PostLook } from './PostLook.tsx'
import { StandingCounts } from './StandingCounts.tsx'
import { StationLook } from './StationLook.tsx'

/** The drawing as the way around: each of its parts opens in place, under it. */
export function LineInPlace({ opened, since }: { opened: Opened; since: SinceSigned | undefined }) {
  const { notebook, notebookId } = opened
  const found = takeOffWhereBuilt(notebook)
  const standings = drawnStandings(opened, since)
  return (
    <LookAround>
      <LineDrawing
        notebook={notebook}
        takeOff={found}
        home={`/notebook/${notebookId}`}
        inPlace={{ addressOf: lookAddresses(found), standings }}
      />
      <StandingCounts opened={opened} since={since} />
      {notebook.sections.map(({ id }, index) => (
        <ItemLook key={id} opened={opened} since={since} kind="section" index={index} found={found} />
      ))}
      {notebook.gates.map(({ id }, index) => (
        <ItemLook key={id} opened={opened} since={since} kind="gate" index={index} found={found} />
      ))}
      {notebook.line.stations.map(({ at }, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a station is told by its place alone
        <StationLook key={`${index} ${at}`} opened={opened} since={since} index={index} />
      ))}
      {found && postsOneByOne(found)
        ? found.posts.map(({ index }) => <PostLook key={index} opened={opened} found={found} place={index} />)
        : null}
    </LookAround>
  )
}
