import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { offlineStatic } from './src/cli/offline-adapter.js'

/**
 * The script that stands in every page before the first paint, by its hash: a file of its own would cost a slow line a round trip.
 *
 * @type {`sha256-${string}`}
 */
const firstScript = `sha256-${createHash('sha256')
  .update(/<script>([^]*?)<\/script>/.exec(readFileSync('src/app.html', 'utf8'))?.[1] ?? '')
  .digest('base64')}`

/** @type {import('@sveltejs/kit').Config} */
const config = {
  kit: {
    adapter: offlineStatic({ fallback: '200.html' }),
    // The styles come with the page: the page that is written on can be written on after one round trip.
    inlineStyleThreshold: 12_000,
    csp: {
      mode: 'hash',
      directives: {
        'default-src': ['self'],
        'script-src': ['self', firstScript],
        'style-src': ['self'],
        // The route announcer of SvelteKit hides itself with one style attribute; this is its hash.
        'style-src-attr': ['unsafe-hashes', 'sha256-S8qMpvofolR8Mpjy4kQvEm7m1q8clzU4dfDH0AmvZjo='],
        'img-src': ['self', 'data:'],
        'worker-src': ['self'],
        'connect-src': ['self'],
        'object-src': ['none'],
        'base-uri': ['none'],
        'form-action': ['none'],
      },
    },
  },
}

export default config
