import { printFonts } from '../../../../lib/files/printFonts.ts'
import { accountPdf } from '../../../../lib/pdf/accountPdf.ts'
import type { FrozenAccount } from './frozenAccounts.ts'

/** The paper of a final account, with the signatures that it has. Dated by the last of them. */
export function accountPaper(
  { stored, account, signatures, stillToSign }: FrozenAccount,
  units: 'ft-in' | 'metric',
): Promise<Uint8Array> {
  const moments = [stored.frozenAt, ...signatures.map(({ signedAt }) => signedAt)]
  return accountPdf({
    account,
    number: stored.number,
    sha256: stored.sha256,
    frozenAt: stored.frozenAt,
    signatures,
    signedByAll: stillToSign.length === 0,
    units,
    madeAt: new Date(Math.max(...moments.map((moment) => moment.getTime()))),
    fonts: printFonts(),
  })
}
