import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { savedName, shownName } from '../../lib/files/fileNames.ts'

describe('the name of a file as it is shown', () => {
  test.each([
    ['old fence.jpg', 'old fence.jpg'],
    ['C:\\fakepath\\old fence.jpg', 'old fence.jpg'],
    ['../../etc/passwd', 'passwd'],
    ['  many \t blanks\n.jpg ', 'many blanks .jpg'],
    ['\u202egpj.exe', 'gpj.exe'],
    ['a\u0000b\u0007.jpg', 'ab.jpg'],
    ['Zaun am Bächlein.jpg', 'Zaun am Bächlein.jpg'],
    ['塀の写真.jpg', '塀の写真.jpg'],
    ['<script>.jpg', '<script>.jpg'],
    ['', 'file'],
    ['...', 'file'],
    ['/', 'file'],
    ['x\ud800y.jpg', 'x�y.jpg'],
    [`${'long '.repeat(60)}.jpg`, `${'long '.repeat(60).slice(0, 119)}`],
  ])('%j is %j', (given, shown) => {
    expect(shownName(given)).toBe(shown)
  })

  test('is one short line of whole characters, whatever was given', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (given) => {
        const name = shownName(given)
        expect(name).toMatch(/^[^\p{Cc}\p{Cf}/\\]{1,120}$/u)
        expect(name.isWellFormed()).toBe(true)
      }),
    )
  })
})

describe('the name under which a file is saved', () => {
  test.each([
    ['old fence.jpg', 'image/jpeg', 'old-fence.jpg'],
    ['old fence.JPEG', 'image/jpeg', 'old-fence.jpg'],
    ['letter.pdf.exe', 'application/pdf', 'letter-pdf-exe.pdf'],
    ['photo.png', 'image/jpeg', 'photo.jpg'],
    ['Zaun am Bächlein', 'image/webp', 'zaun-am-bachlein.webp'],
    ['塀の写真.jpg', 'image/png', 'file.png'],
    ['"; rm -rf /', 'image/png', 'rm-rf.png'],
  ] as const)('%s as %s is %s', (name, type, saved) => {
    expect(savedName(name, type)).toBe(saved)
  })

  test('has plain letters and the ending of its content, whatever it was called', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (name) => {
        expect(savedName(name, 'application/pdf')).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*\.pdf$/)
      }),
    )
  })
})
