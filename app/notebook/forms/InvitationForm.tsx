'use client'

import { useState } from 'react'
import { CopyField } from '../../ui/draft/CopyField.tsx'
import { type PressAction, PressForm } from '../../ui/draft/PressForm.tsx'

/** Makes an invitation and shows it once: it is stored nowhere but as a hash. */
export function InvitationForm({
  invite,
  waiting,
}: {
  invite: () => Promise<{ address: string } | { refused: string }>
  /** Whether one made before waits to be claimed. */
  waiting: boolean
}) {
  const [address, setAddress] = useState<string>()
  const press: PressAction = async () => {
    const answer = await invite()
    if ('refused' in answer) return { refused: answer.refused }
    setAddress(answer.address)
    return { done: 'The invitation is ready.' }
  }
  const another = waiting || address !== undefined
  return (
    <>
      {address === undefined ? null : (
        <CopyField
          label="Invitation, works once"
          value={address}
          hint="Hand it over on paper, by message or in person. It is not shown again."
        />
      )}
      <PressForm
        action={press}
        label={another ? 'Make another; the first ends' : 'Make an invitation'}
        weight={another ? 'plain' : 'main'}
      />
    </>
  )
}
