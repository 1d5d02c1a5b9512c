import { firstStepsWords } from '../../../../lib/words/firstStepsText.ts'
import { ButtonLink } from '../../../ui/ButtonLink.tsx'
import { Panel } from '../../../ui/Panel.tsx'

/** In the place of the drawing, while there is nothing to draw. */
export function FirstSteps({ home, bothIn }: { home: string; bothIn: boolean }) {
  const words = firstStepsWords
  return (
    <Panel heading={words.heading}>
      <ol className="first-steps">
        <li>
          <ButtonLink href={`${home}/line`}>{words.line}</ButtonLink>
          <p>{words.lineWhy}</p>
        </li>
        <li>
          <ButtonLink href={`${home}/add/section`}>{words.section}</ButtonLink>
          <p>{words.sectionWhy}</p>
        </li>
        <li>
          {bothIn ? null : <ButtonLink href={`${home}/links`}>{words.invite}</ButtonLink>}
          <p>{bothIn ? words.invited : words.inviteWhy}</p>
        </li>
      </ol>
    </Panel>
  )
}
