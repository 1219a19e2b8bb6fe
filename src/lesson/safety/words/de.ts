import type { HazardName, HazardWords } from '../hazard.ts'
import { listed } from './listed.ts'

/** German. A word with a hyphen before it is also found at the end of compounds: `-messer` in `Bastelmesser`. */
export const de: Readonly<Record<HazardName, HazardWords>> = {
  blades: {
    words: listed(
      `-messer, -cutter, -skalpell, Kreisschneider, Rundschneider, Passepartoutschneider, Rollschneider,
       -rasierklinge, -ersatzklinge, -abbrechklinge, -skalpellklinge, -messerklinge, -cutterklinge`,
    ),
    not: listed(
      `-durchmesser, -halbmesser, -gradmesser, -winkelmesser, -entfernungsmesser, -feuchtigkeitsmesser,
       -neigungsmesser, -dickenmesser, -kraftmesser, -belichtungsmesser, -zeitmesser, -palettmesser,
       -palettenmesser, -malmesser, -buttermesser, -streichmesser, -tafelmesser, -plastikmesser,
       -kunststoffmesser, -spachtelmesser, -federmesser, Papiercutter`,
    ),
    also: listed('-klinge'),
  },
  trimmers: {
    words: listed(
      `-schneidemaschine, -papierschneider, Papiercutter, -hebelschneider, -rollenschneider, Guillotine,
       -schlagschere, -papierschneidegerät, -schneidegerät, Trimmer`,
    ),
    not: listed('-brotschneidemaschine, Barttrimmer, Rasentrimmer, Haartrimmer'),
  },
  scissors: {
    words: [],
    forChildren: listed('-schere'),
    not: listed('Schlagschere'),
  },
  points: {
    words: listed(
      `-nadel, Ahle, Papierahle, Buchbinderahle, Vorstechahle, -vorstecher, -papierstecher, Lochstecher,
       -stecknadel, -pinnnadel, Pin, Pinnwandnadel, -reißzwecke, -reißnagel, -heftzwecke, Zirkel, -spieß,
       -spießchen, -zahnstocher`,
    ),
    not: listed(
      `-tannennadel, -kiefernnadel, -fichtennadel, -baumnadel, -stricknadel, -häkelnadel, -kompassnadel,
       -magnetnadel, -kunststoffnadel, -plastiknadel, -schmucknadel, -krawattennadel`,
    ),
    also: listed('stechen, sticht'),
  },
  punches: {
    words: listed(
      `-locher, -lochzange, -locheisen, -revolverlochzange, -stanzer, -motivstanzer, Stanze, -handstanze,
       -motivstanze, -formstanze, -papierstanze, -kreisstanze, -randstanze, -eckenstanze, -bordürenstanze,
       -buchstabenstanze, -zahlenstanze, -etikettenstanze, ausstanzen, -stanzgerät, -stanzmaschine,
       -stanzform, -stanzschablone, -stanzplatte, -prägemaschine, -schneideplotter, -plotter, -eckenrunder,
       -eckenabrunder, -ösenzange, -ösenstanze, -ösensetzer, -ösenwerkzeug, -nietenzange, -lochpfeife,
       -hammer, Papierbohrer, -buchpresse, -stapelpresse, -walzenpresse, -druckpresse, Spindelpresse,
       -tacker, -hefter, -heftgerät, -klammergerät`,
    ),
    not: listed('-schnellhefter, -stifthammer, Sammelhefter'),
    also: listed('Walze, Presse, Maschine, klemmen, Klemmgefahr'),
  },
  wire: {
    words: listed(
      `-draht, -drähte, -drahtstück, -drahtschneider, -drahtzange, -seitenschneider, -drahtschere`,
    ),
    not: listed('-stacheldraht'),
    also: listed('Drahtende'),
  },
  film: {
    words: listed(
      `Folie, -acetatfolie, Acetat, Azetat, -azetatfolie, -klarsichtfolie, -kunststofffolie, -plastikfolie,
       -hartfolie, -overheadfolie, -polyesterfolie, -schrumpffolie, -schrumpfplastik, -mobilefolie,
       -windradfolie, -prägefolie, -metallfolie, -aluprägefolie, -kupferfolie, -laminierfolie,
       Transparentfolie, -blech`,
    ),
    not: listed(
      `-frischhaltefolie, Alufolie, -klebefolie, -magnetfolie, -luftpolsterfolie, Backblech, -heißprägefolie`,
    ),
    also: listed('-folie'),
  },
  heat: {
    words: listed(
      `-heißluftpistole, -heißluftföhn, -heißluftfön, -heißluftgerät, -embossingföhn, -embossingfön,
       -embossinggerät, Embossing-Pistole, -prägeföhn, -föhn, -fön, -heizpistole, -lötkolben, -lötpistole,
       -bügeleisen, -brandmalkolben, -brennkolben, -brandmalgerät, -brandmalstift, -laminiergerät,
       -laminator, -schmelztopf, -schmelzgranulattopf, -kochplatte, -herdplatte, -heizplatte,
       -transferpresse, -wärmepresse, -heißschneider, -styroporschneider, -heißprägegerät, -folienstift`,
    ),
    not: listed('Reisebügelbrett'),
    also: listed('-hitze, heiß, Verbrennung, verbrennen, versengen'),
  },
  'hot-glue': {
    words: listed(
      `-heißklebepistole, -klebepistole, -heißkleber, -heißleim, -heißklebestift, -heißklebepatrone,
       -heißklebestick, -schmelzkleber, -schmelzklebstoff, -klebepatrone, -leimpistole, Heißklebe-Pistole,
       Klebe-Pistole`,
    ),
    also: listed('Düse'),
  },
  flames: {
    words: listed(
      `-kerze, -teelicht, -streichholz, -streichhölzer, -zündholz, -zündhölzer, -feuerzeug, -gasbrenner,
       -bunsenbrenner, -lötlampe, -siegelwachs, -siegellack, -räucherstäbchen, -wunderkerze, -lagerfeuer,
       offene Flamme, offenes Feuer, -fackel`,
    ),
    not: listed(
      `-zündkerze, LED-Kerze, LEDKerze, LED-Teelicht, LED-Wachskerze, -batteriekerze, elektrische Kerze,
       künstliche Kerze, elektrisches Teelicht, -königskerze, batteriebetriebene Kerze,
       batteriebetriebenes Teelicht`,
    ),
    also: listed('-flamme, Feuer, verbrennen, anzünden'),
  },
  sprays: {
    words: listed(
      `-spray, -sprühkleber, -sprühlack, -sprühfarbe, -sprühdose, -spraydose, -spraykleber, -spraylack,
       -sprayfarbe, Fixativ, -fixierspray, -aerosol, -lackspray`,
    ),
    not: listed('-wasserspray, -fensterspray'),
    also: listed('sprühen, Dampf, lüften, frische Luft'),
  },
  solvents: {
    words: listed(
      `-kontaktkleber, -kontaktklebstoff, -kraftkleber, -gummilösung, -montagekleber, -lösungsmittel,
       lösungsmittelhaltig, -waschbenzin, -reinigungsbenzin, -feuerzeugbenzin, -benzin, -terpentin,
       -terpentinersatz, -testbenzin, -spiritus, -brennspiritus, -isopropanol, -isopropylalkohol,
       -reinigungsalkohol, -alkoholtinte, -aceton, -azeton, -nagellackentferner, -kleberentferner,
       -klebstoffentferner, -etikettenlöser, -etikettenentferner, -verdünner, -pinselreiniger,
       -nitroverdünnung, -universalverdünnung, Gummikleber`,
    ),
    not: listed(
      `lösungsmittelfrei, acetonfrei, acetonfreier Nagellackentferner, lösungsmittelfreier Kontaktkleber,
       lösungsmittelfreier Montagekleber, Kleber ohne Lösungsmittel, Klebstoff ohne Lösungsmittel`,
    ),
    also: listed('-dampf, -dämpfe, lüften, frische Luft'),
  },
  'instant-glue': {
    words: listed(
      `-sekundenkleber, -sekundenklebstoff, -sekundenleim, Superkleber, -blitzkleber, -schnellkleber,
       -cyanacrylat, -cyanoacrylat, -cyanacrylatkleber, CA-Kleber, Cyankleber`,
    ),
  },
  resin: {
    words: listed(
      `-epoxid, -epoxidharz, -epoxidkleber, -epoxy, -epoxyharz, -gießharz, -kunstharz, UV-Harz, -harz,
       Zweikomponentenkleber, Zwei-Komponenten-Kleber, 2-Komponenten-Kleber, 2K-Kleber, -harzhärter,
       Resinhärter, Resin`,
    ),
    not: listed('-baumharz, Acrylharzlack, harzfrei'),
  },
  powders: {
    words: listed(
      `-embossingpulver, Embossing-Pulver, -prägepulver, -pulver, -puder, -pigment, -glitter, -glitzer,
       -streuglitzer, -flitter, -flockpulver, -flockfaser, -beflockungsfaser, -diamantstaub, -kreidestaub,
       -glimmer, -glimmerpulver`,
    ),
    not: listed(
      `Glitzerkleber, Glitterkleber, -backpulver, -puddingpulver, -waschpulver, Glitzer-Kleber,
       Glitter-Kleber, Glitzer-Karton, Glitzer-Papier, Glitter-Karton, Glitter-Papier`,
    ),
    also: listed('-pulver, -staub'),
  },
  'small-parts': {
    words: listed(
      `-perle, -rocaille, -strassstein, Glasstrass, -glitzerstein, -schmuckstein, -glasstein, -kristall,
       -cabochon, -klebestein, -glasnugget, -edelstein, Brad, -musterklammer, -musterbeutelklammer, Splint,
       -knopf, -knöpfe, -wackelauge, -kullerauge, -paillette, Enamel-Dot, -halbperle, Öse, Metallöse, Niete,
       Hohlniete, Charms, Metallanhänger, -glöckchen, Schelle, Murmel, Glasmurmel, -schüttelfüllung,
       -streuteil, -streudeko, -miniklammer, Mini-Klammer, -holzkügelchen, -pompon, -miniwäscheklammer,
       Mini-Wäscheklammer, -trockenerbse, getrocknete Bohne, getrocknete Erbse, -minilampe, -glassteinchen,
       -steckperle, -bügelperle`,
    ),
    alone: listed('Strass'),
    forChildren: listed(
      `-klebepad, -schaumstoffpad, -schaumpad, -abstandspad, Abstandshalter, 3D-Klebepad, 3D-Pad,
       Abstandsklebepunkt, -schaumstoffklebepad, -klebequadrat`,
    ),
    not: listed(
      `-knopfzelle, -knopfbatterie, Knopfloch, -magnetknopf, -schaltknopf, -drehknopf, -einschaltknopf,
       -startknopf, -druckknopfzange, Perlenpulver, Perlenstift, Perlen-Pen`,
    ),
    also: listed('ersticken, Erstickungsgefahr, verschlucken, verschluckt, Kleinteil'),
  },
  magnets: {
    words: listed(
      `-magnet, -magnetverschluss, -magnetverschlüsse, -magnetknopf, -magnetplättchen, -magnetschließe,
       -magnetpunkt`,
    ),
    not: listed('-magnetfolie, -magnetband, -magnetmatte, -magnetpapier'),
  },
  'button-cells': {
    words: listed(
      `-knopfzelle, -knopfbatterie, -lithiumzelle, -knopfzellenbatterie, LED-Kerze, LEDKerze, LED-Teelicht,
       LED-Licht, LED-Wachskerze, -batteriekerze, elektrische Kerze, elektrisches Teelicht, künstliche Kerze,
       batteriebetriebene Kerze, batteriebetriebenes Teelicht, LED-Lichterkette, -lichterkette, -soundmodul,
       -musikmodul, -klangmodul, CR1216, CR1220, CR1616, CR1620, CR2016, CR2025, CR2032, CR2450, LR41, LR44,
       AG13`,
    ),
    also: listed('-zelle, -batterie'),
  },
  balloons: {
    words: listed('-ballon, -luftballon, -wasserbombe'),
    not: listed('-folienballon, -heißluftballon, -fesselballon'),
  },
  allergies: {
    words: listed(
      `-latex, -latexhandschuh, -gummihandschuh, -gummiband, -gummibänder, -gummiring, -haushaltsgummi,
       -maskierflüssigkeit, -rubbelkrepp, -nussschale, Nuss, Nüsse, -walnuss, -walnüsse, -haselnuss,
       -haselnüsse, -erdnuss, -erdnüsse, -mandel, -pistazienschale, -eierschale, -eierkarton, -eierschachtel,
       -feder, -vogelfeder, -trockenblume, getrocknete Blume, gepresste Blume, -pressblume, -rohwolle,
       -mehlkleister, -weizenkleister, -mehl, -bienenwachs, ätherisches Öl`,
    ),
    not: listed(
      `latexfrei, latexfreier Handschuh, -stahlfeder, -schreibfeder, -zeichenfeder, -spitzfeder,
       -bandzugfeder, -spiralfeder, -sprungfeder, -druckfeder, -zugfeder, -rasierfeder, -sägemehl, -holzmehl`,
    ),
    also: listed('allergisch, Allergie'),
  },
}
