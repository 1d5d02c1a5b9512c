import type { ElementType, Key, ReactElement } from 'react'
import * as react from 'react/jsx-dev-runtime'
import { type Shown, withFiguresBound } from './withFiguresBound.ts'

// The same as jsx-runtime.ts for the development server and the tests, which compile to other calls.

export { Fragment, type JSX } from 'react/jsx-dev-runtime'

export function jsxDEV(
  type: ElementType,
  props: Shown,
  key: Key | undefined,
  isStatic: boolean,
  source?: react.JSXSource,
  self?: unknown,
): ReactElement {
  return react.jsxDEV(type, withFiguresBound(type, props), key, isStatic, source, self)
}
