import { currencies } from '../../lib/core/amounts/currency.ts'
import { whatThisIs } from '../../lib/words/standingTexts.ts'
import { HeadingForm } from '../notebook/forms/HeadingForm.tsx'
import { BareFrame } from '../ui/BareFrame.tsx'
import { Page } from '../ui/Page.tsx'
import { startNotebook } from './actions.ts'

export const metadata = { title: 'Start a notebook' }

const empty = {
  title: '',
  currency: 'USD',
  units: 'ft-in',
  households: { a: { name: '', parties: [] }, b: { name: '', parties: [] } },
}

export default function StartPage() {
  return (
    <BareFrame footer={whatThisIs}>
      <Page
        title="Start a notebook"
        lead="You are the first household. You get a private link to keep, and an invitation to hand to your neighbours. Everything here can be changed later; parties can be added when you know their names."
        back={{ href: '/', label: 'Start page' }}
      >
        <HeadingForm
          initial={empty}
          base="new"
          save={startNotebook}
          saveLabel="Start the notebook"
          currencies={currencies()}
        />
      </Page>
    </BareFrame>
  )
}
