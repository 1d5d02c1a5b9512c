import Link from 'next/link'
import { firstStepsWords } from '../../../../lib/words/firstStepsText.ts'
import { Panel } from '../../../ui/Panel.tsx'
import type { Opened } from '../opened.ts'
import { FirstSplitPart } from './FirstSplitPart.tsx'
import { nothingLaidOut } from './nothingLaidOut.ts'

/**
 * In the place of the drawing, while there is nothing to draw. Where nothing is laid out at all, the first split is the
 * beginning, and the three steps are offered under it.
 */
export function FirstSteps({ opened, bothIn }: { opened: Opened; bothIn: boolean }) {
  const steps = <Steps home={`/notebook/${opened.notebookId}`} bothIn={bothIn} />
  if (!nothingLaidOut(opened)) return <Panel heading={firstStepsWords.heading}>{steps}</Panel>
  return (
    <FirstSplitPart opened={opened}>
      <Panel heading={firstStepsWords.instead} level={3} tone="quiet">
        {steps}
      </Panel>
    </FirstSplitPart>
  )
}

function Steps({ home, bothIn }: { home: string; bothIn: boolean }) {
  const words = firstStepsWords
  const step = (page: string, label: string) => (
    <Link href={`${home}/${page}`} prefetch={false}>
      {label}
    </Link>
  )
  return (
    <ol className="first-steps">
      <li>
        {step('line', words.line)}
        <p>{words.lineWhy}</p>
      </li>
      <li>
        {step('add/section', words.section)}
        <p>{words.sectionWhy}</p>
      </li>
      <li>
        {bothIn ? null : step('links', words.invite)}
        <p>{bothIn ? words.invited : words.inviteWhy}</p>
      </li>
    </ol>
  )
}
