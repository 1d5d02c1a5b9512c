import type { Browser } from '@playwright/test'
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest'
import { openBrowser } from './browser.ts'
import { expectPage } from './expectPage.ts'

describe('the first page', () => {
  let browser: Browser

  beforeAll(async () => {
    browser = await openBrowser()
  })
  afterAll(async () => {
    await browser?.close()
  })

  test('opens in a browser, and the browser has nothing to complain about', async () => {
    const page = await browser.newPage()
    const complaints: string[] = []
    page.on('console', (message) => {
      if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text())
    })
    page.on('pageerror', (error) => complaints.push(String(error)))

    const answer = await page.goto(inject('baseUrl'), { waitUntil: 'networkidle' })

    expect(answer?.status()).toBe(200)
    expect(await page.title()).not.toBe('')
    expect(complaints).toEqual([])
  })

  // With no-referrer a browser sends `Origin: null` along with a form (Fetch standard, "append a request Origin header"), and Next
  // refuses such a form where it comes without script.
  test('does not ask for the referrer policy that breaks forms sent without script', async () => {
    const page = await browser.newPage()
    await page.goto(inject('baseUrl'))

    const policies = await page
      .locator('meta[name=referrer]')
      .evaluateAll((metas) => metas.map((meta) => meta.getAttribute('content')))

    expect(policies).not.toContain('no-referrer')
  })

  test('shows the subject at a glance, and its two beginnings at once where there is room', async () => {
    const page = await browser.newPage({ viewport: { width: 1280, height: 900 } })
    await page.goto(inject('baseUrl'))
    await expectPage(page.locator('.line-band')).toBeVisible()
    for (const name of ['Start a notebook', /^Open the example as the first/])
      await expectPage(page.locator('a, button').filter({ hasText: name })).toBeInViewport({ ratio: 1 })
    await page.setViewportSize({ width: 390, height: 844 })
    await expectPage(page.getByRole('link', { name: 'Start a notebook' })).toBeInViewport({ ratio: 1 })
    await page.close()
  })

  test('loads nothing from anywhere but the install itself', async () => {
    const page = await browser.newPage()
    const asked: string[] = []
    page.on('request', (request) => asked.push(request.url()))

    await page.goto(inject('baseUrl'), { waitUntil: 'networkidle' })

    expect(asked.length).toBeGreaterThan(1)
    const elsewhere = asked.filter(
      (url) => !url.startsWith('data:') && new URL(url).origin !== inject('baseUrl'),
    )
    expect(elsewhere).toEqual([])
  })
})

describe('every answer of the program', () => {
  test.each(['/', '/a-page-that-is-not-there'])(
    'keeps other sites, frames and search engines out: %s',
    async (place) => {
      const { headers } = await fetch(inject('baseUrl') + place)

      expect(headers.get('content-security-policy')).toContain("default-src 'self'")
      expect(headers.get('content-security-policy')).toContain("frame-ancestors 'none'")
      expect(headers.get('content-security-policy')).not.toContain('unsafe-eval')
      expect(headers.get('x-content-type-options')).toBe('nosniff')
      expect(headers.get('referrer-policy')).toBe('same-origin')
      expect(headers.get('x-frame-options')).toBe('DENY')
      expect(headers.get('x-robots-tag')).toContain('noindex')
      expect(headers.get('x-powered-by')).toBeNull()
    },
  )
})
