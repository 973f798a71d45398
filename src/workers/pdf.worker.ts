/** The library's own worker, as a script of ours: hosts know the type of `.js`, not always that of `.mjs`. */
import 'pdfjs-dist/build/pdf.worker.min.mjs'
