import { offlineStatic } from './src/cli/offline-adapter.js'

/** @type {import('@sveltejs/kit').Config} */
const config = {
  kit: {
    adapter: offlineStatic({ fallback: '200.html' }),
    csp: {
      mode: 'hash',
      directives: {
        'default-src': ['self'],
        'script-src': ['self'],
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
