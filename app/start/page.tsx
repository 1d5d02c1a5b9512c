import { headers } from 'next/headers'
import { currencies } from '../../lib/core/amounts/currency.ts'
import { startingGuess } from '../../lib/forms/startingGuess.ts'
import { whatThisIs } from '../../lib/words/standingTexts.ts'
import { startWords } from '../../lib/words/startText.ts'
import { BareFrame } from '../ui/BareFrame.tsx'
import { Page } from '../ui/Page.tsx'
import { startNotebook } from './actions.ts'
import { StartForm } from './StartForm.tsx'

export const metadata = { title: startWords.title }

export default async function StartPage() {
  const guess = startingGuess((await headers()).get('accept-language') ?? '')
  const nobody = { name: '', parties: [] }
  return (
    <BareFrame footer={whatThisIs}>
      <Page title={startWords.title} lead={startWords.lead} back={{ href: '/', label: 'Start page' }}>
        <StartForm
          initial={{ title: '', ...guess, households: { a: nobody, b: nobody } }}
          save={startNotebook}
          currencies={currencies()}
        />
      </Page>
    </BareFrame>
  )
}
