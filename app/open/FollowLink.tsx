import { longestPasted } from '../../lib/access/pastedAddress.ts'
import { followWords } from '../../lib/words/linkText.ts'
import { PressForm } from '../ui/draft/PressForm.tsx'
import { Panel } from '../ui/Panel.tsx'
import { followLink } from './actions.ts'

/** A field for a link or an invitation that was sent elsewhere than to this browser, or handed over on paper. */
export function FollowLink() {
  return (
    <Panel heading={followWords.heading}>
      <p>{followWords.about}</p>
      <PressForm action={followLink} label={followWords.press}>
        <div className="field">
          <label className="field-label" htmlFor="link">
            {followWords.field}
          </label>
          <input
            id="link"
            name="link"
            type="text"
            inputMode="url"
            autoCapitalize="none"
            autoComplete="off"
            spellCheck={false}
            maxLength={longestPasted}
          />
        </div>
      </PressForm>
    </Panel>
  )
}
