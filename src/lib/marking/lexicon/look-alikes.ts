/**
 * Terms that look like one another and are different things: a misspelling that is as near to one as to another says neither. Words of
 * one line need not stand in one topic; whole words only, in the form in which they are mistaken. Common practice, from memory.
 */
export const lookAlikes = `
# biology and medicine
mitosis, meiosis
mitotic, meiotic
glucagon, glycogen, glucose
ureter, urethra
ileum, ilium
cellulose, cellulase
amylose, amylase
lactose, lactase
maltose, maltase
sucrose, sucrase
protein, protease
lipid, lipase
peptide, peptidase
thymine, thiamine
adenine, adenosine
guanine, guanosine
uracil, uridine
chromatid, chromatin
centromere, centrosome, centriole
antigen, antibody
ribosome, lysosome
vacuole, vesicle
stigma, stoma, stroma
stamen, stomata
sepal, petal
phagocyte, lymphocyte
afferent, efferent
abduction, adduction
abductor, adductor
anabolic, catabolic
anabolism, catabolism
bronchi, bronchioles
dendrite, dendron
hyperglycaemia, hypoglycaemia
hypertension, hypotension
hypertonic, hypotonic, isotonic
hyperthermia, hypothermia
hypothalamus, hippocampus, thalamus
prokaryote, eukaryote
prokaryotic, eukaryotic
haploid, diploid
genotype, phenotype
homozygous, heterozygous
homologous, heterologous
monocotyledon, dicotyledon
mucus, mucous
myopia, hyperopia
oestrogen, androgen
plasmid, plasma
prophase, metaphase, anaphase, telophase
thorax, thyroid
tibia, fibula
trachea, tracheid
vertebrate, invertebrate
# chemistry
alkane, alkene, alkyne
alkanes, alkenes, alkynes
ammonia, ammonium
anion, cation
bromine, bromide
chlorine, chloride, chlorate
fluorine, fluoride
iodine, iodide
ethane, ethene, ethyne
ethanol, ethanal, methanol
ethanoic, methanoic
propane, propene
butane, butene
propanol, propanal, propanone
nitrate, nitrite, nitride
sulfate, sulfite, sulfide
sulphate, sulphite, sulphide
phosphate, phosphite, phosphide
carbonate, carbide
exothermic, endothermic
hydrolysis, hydration
isotope, isomer
magnesium, manganese
potassium, phosphorus
silicon, silicone
strontium, scandium
absorption, adsorption
absorb, adsorb
titrant, titrate, titre
# physics and mathematics
concave, convex
proton, photon
neutron, neuron
diffraction, refraction
fission, fusion
isobar, isotherm
permeability, permittivity
parallel, parallax
perimeter, parameter
radian, radiant
resistance, resistivity, reactance
conductance, conductivity
capacitance, capacity
velocity, viscosity
median, medium
hexagon, heptagon
quadrant, quadrat
# earth and sea
stalactite, stalagmite
syncline, anticline
meteor, meteorite, meteoroid
cirrus, cumulus
ebb, eddy
evaporation, evapotranspiration
longitude, latitude
epicentre, hypocentre
lithosphere, hydrosphere, biosphere
troposphere, stratosphere, mesosphere
# people, money, law, words
allusion, illusion
assonance, consonance, dissonance
autocracy, aristocracy, theocracy
communism, consumerism
complement, compliment
conscience, conscious
deflation, disinflation, reflation
emigrant, immigrant, migrant
emigration, immigration, migration
explicit, implicit
monopoly, monopsony, oligopoly
duopoly, oligopoly
oligarchy, oligopoly
metaphor, metonymy
monarchy, anarchy
synonym, antonym, homonym
personal, personnel
principal, principle
proactive, reactive, retroactive
prescribe, proscribe
lessor, lessee
# computing
decode, encode
decrypt, encrypt
decryption, encryption
intranet, internet, extranet
ethernet, internet
`
