/** What a new notebook begins with until somebody says otherwise. */
export type StartingGuess = { readonly currency: string; readonly units: 'ft-in' | 'metric' }

/**
 * Guesses currency and units from what a browser says of its languages (`Accept-Language`, RFC 9110): from the country of
 * the first language that names one, else from where its first language is mostly spoken. Only a guess: the form shows it.
 */
export function startingGuess(acceptLanguage: string): StartingGuess {
  const wanted = languages(acceptLanguage)
  const named = wanted.map((tag) => regionOf(tag, false)).find((region) => region !== undefined)
  const region = named ?? regionOf(wanted[0] ?? '', true) ?? 'US'
  return { currency: currencyOf.get(region) ?? 'USD', units: inFeet.has(region) ? 'ft-in' : 'metric' }
}

/** The tags in the order in which they are wanted: by their `q`, then as they stand. */
function languages(acceptLanguage: string): readonly string[] {
  return acceptLanguage
    .slice(0, 1000)
    .split(',')
    .map((part) => {
      const [tag = '', ...parameters] = part.split(';').map((text) => text.trim())
      const q = parameters.find((one) => one.startsWith('q='))
      return { tag, weight: q === undefined ? 1 : Number(q.slice(2)) || 0 }
    })
    .filter(({ tag, weight }) => tag !== '' && tag !== '*' && weight > 0)
    .sort((one, other) => other.weight - one.weight)
    .map(({ tag }) => tag)
}

function regionOf(tag: string, likely: boolean): string | undefined {
  try {
    const locale = new Intl.Locale(tag)
    return (likely ? locale.maximize() : locale).region
  } catch {
    return undefined
  }
}

/** Where fences are measured in feet and inches (ISO 3166). */
const inFeet = new Set(['US', 'LR', 'MM', 'PR', 'GU', 'VI', 'AS', 'MP'])

/** Money by country, ISO 4217 and ISO 3166; a country that is not here begins with US dollars. */
const currencyOf = new Map(
  Object.entries({
    AUD: 'AU KI NR TV',
    BRL: 'BR',
    CAD: 'CA',
    CHF: 'CH LI',
    CLP: 'CL',
    CNY: 'CN',
    COP: 'CO',
    CZK: 'CZ',
    DKK: 'DK FO GL',
    EUR: 'AD AT BE BG CY DE EE ES FI FR GR HR IE IT LT LU LV MC MT NL PT SI SK SM VA',
    GBP: 'GB GG IM JE',
    HUF: 'HU',
    INR: 'IN',
    ISK: 'IS',
    JPY: 'JP',
    KES: 'KE',
    KRW: 'KR',
    MXN: 'MX',
    NAD: 'NA',
    NGN: 'NG',
    NOK: 'NO SJ',
    NZD: 'NZ CK NU PN TK',
    PHP: 'PH',
    PLN: 'PL',
    RON: 'RO',
    SEK: 'SE',
    TRY: 'TR',
    UAH: 'UA',
    ZAR: 'ZA',
  }).flatMap(([currency, regions]) => regions.split(' ').map((region) => [region, currency] as const)),
)
