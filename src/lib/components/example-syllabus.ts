/** A small syllabus that shows every field and every sign of the notation. It can be read as it is. */
export const EXAMPLE_SYLLABUS = `format: 1
title: Rock Pools, Level 1
note: Written to show how a syllabus file is made.
topics:
  - title: Between the tides
    points:
      - ref: '1.1'
        text: Limpets clamp down at low tide so that they do not dry out.
        ideas:
          - clamp (down) / hold tight / cling(ing)
          - low tide / tide is out
          - dry out / lose water
        reject:
          - limpets dry out at high tide
      - ref: '1.2'
        text: The intertidal zone lies between high water and low water.
        cue: What is the part of the shore between the tides called, and where does it lie?
        ideas:
          - '"intertidal zone"'
          - high water / high tide + low water / low tide
      - ref: '1.3'
        text: Name two animals of a rock pool.
        any: 2
        ideas: [limpet, sea anemone / anemone, prawn / shrimp, crab]
      - ref: '1.4'
        text: The speed of a wave is its frequency times its wavelength.
        equation: v = f × λ
        where:
          v: wave speed / speed
          f: frequency
          λ: wavelength / lambda
      - ref: '1.5'
        text: On most coasts high water comes about every 12.4 hours.
        ideas: [high water / high tide]
        value: 12.4 hours ± 0.2
  - title: Counting limpets
    caution: >-
      Ask when the tide turns before you go. Your teacher's risk
      assessment and the local rules come first.
    points:
      - ref: '2.1'
        text: Place a frame at random, count the limpets in it, repeat.
        steps:
          - place / put / throw + frame / quadrat
          - count / record + limpets
          - repeat / again
      - ref: '2.2'
        text: More limpets live where strong waves keep seaweeds away.
`
