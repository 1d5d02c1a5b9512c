import { describe, expect, test } from 'vitest'
import { fieldId } from '../../app/ui/draft/fieldId.ts'
import { isWithin, moveRowFaults, nearestField } from '../../app/ui/draft/rowFaults.ts'

const faults = [
  { path: 'materials[0].quantity', message: 'first' },
  { path: 'materials[2].unitPrice', message: 'third' },
  { path: 'materials', message: 'the list' },
  { path: 'materialsNote[0]', message: 'another list' },
  { path: '', message: 'all' },
]

describe('faults in rows', () => {
  test('stay with their row when one before it is removed, and go with a removed row', () => {
    const left = moveRowFaults(faults, 'materials', (at) => (at === 0 ? undefined : at - 1))
    expect(left.map((fault) => fault.path)).toEqual([
      'materials[1].unitPrice',
      'materials',
      'materialsNote[0]',
      '',
    ])
  })

  test('of nested rows keep what follows the moved place', () => {
    const nested = [{ path: 'sections[1].materials[4].what', message: '' }]
    expect(moveRowFaults(nested, 'sections', (at) => at + 1)).toEqual([
      { path: 'sections[2].materials[4].what', message: '' },
    ])
    expect(moveRowFaults(nested, 'sections[1].materials', () => 0)).toEqual([
      { path: 'sections[1].materials[0].what', message: '' },
    ])
  })
})

describe('the field a fault leads to', () => {
  const fields = ['name', 'share.materials.principle', 'share.materials.a', 'materials', 'materials[0].what']

  test('is its own where the page has one', () => {
    expect(nearestField('share.materials.a', fields)).toBe('share.materials.a')
    expect(nearestField('materials', fields)).toBe('materials')
  })

  test('is the first inside what the fault names', () => {
    expect(nearestField('share.materials', fields)).toBe('share.materials.principle')
    expect(nearestField('materials[0]', fields)).toBe('materials[0].what')
  })

  test('is none where the page has no such field', () => {
    expect(nearestField('', fields)).toBeUndefined()
    expect(nearestField('na', fields)).toBeUndefined()
    expect(nearestField('materials[1].what', fields)).toBeUndefined()
  })

  test('has an id made from its path alone', () => {
    expect(fieldId('field', 'materials[0].quantity')).toBe('field-materials-0-quantity')
    expect(fieldId('line', '')).toBe('line-whole')
  })
})

describe('a path within another', () => {
  test('is that path, a key of it or an entry of it, and nothing that only begins alike', () => {
    const whole = 'line.limits'
    const paths = ['line.limits', 'line.limits[0].from', 'line.limits.extra', 'line.limitsOld', 'line', '']
    expect(paths.filter((path) => isWithin(path, whole))).toEqual(paths.slice(0, 3))
  })
})
