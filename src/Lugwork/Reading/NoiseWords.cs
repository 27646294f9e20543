using System.Collections.Immutable;

namespace Lugwork.Reading;

/// <summary>Things that have figures and no interface: a figure beside one of these words is left alone.</summary>
internal static class NoiseWords
{
    public static ImmutableArray<(string Term, string Words)> Rows { get; } =
    [
        ("n:width", "width, wide, breite, breit, largeur, large, ancho, anchura, de ancho, larghezza, largo mm, breedte, breed"),
        ("n:colour", "colour, color, colours, colors, farbe, farben, lackierung, couleur, coloris, colore, colori, kleur, kleuren, finish, paint, coloris cadre, lack, kleurstelling, colorway, colourway, lakkleur, verniciatura, pintura, peinture, tinta"),
        ("n:cut", "cut, uncut, cut at, cut to, gekurzt, ungekurzt, coupe, coupee, non coupe, coupe a, cortado, sin cortar, tagliato, non tagliato, ingekort, niet ingekort, left at, left long, trimmed to, sawn to, sawn off at, shortened to, abgesagt, abgesagt auf, gekurzt auf, raccourci, raccourci a, recoupe, recoupe a, recortado, recortado a, cortada, cortada a, cortado a, acorciato, accorciato, accorciato a, tagliata, tagliata a, tagliato a, afgezaagd, afgezaagd op, ingekort tot, ingekort op"),
        ("n:weight", "weight, gewicht, poids, peso, masse, weighs, wiegt, pese, pesa, weegt, weigh, weights, eigengewicht, gewicht netto, poids net, peso neto, peso netto, nettogewicht, masse a vide, own weight, bare weight, weight without, framegewicht, rahmengewicht, gabelgewicht"),
        ("n:offset", "offset, rake, setback, versatz, deport, chasse, avance, avancement, rastrello, sprong, vorsprung, nachlauf, trail, layback, recul, retroceso, arretramento, ruckversatz, terugstand, suspension corrected, suspension corrected for, federgabelkorrigiert, corrected for, desplazado, desplazada, desplazamiento, decale, decalee, decalage, versetzt, spostato, spostata, disassato, disassata, disassamento, verschoven, verschoben, shifted, displaced, asimetria"),
        ("n:angle", "angle, degree, degrees, winkel, grad, angulo, angolo, hoek, graden, gradi, grados, degre, degres, backsweep, upsweep, rise, sweep, drop, flare, flair, steigungswinkel, levee, alza, elevacion, rialzo, stijging"),
        ("n:reach", "stanchion, stanchions, standrohr, standrohre, plongeurs, barras, steli, standbuizen, legs, splines, q factor, qfactor, stack height, bauhohe, bouwhoogte, hauteur d'empilement, altezza totale, clamp height, klemmhohe, erd, effective rim diameter, bar reach, stack, wheelbase, radstand, empattement, standover, chainstay, chain stay, kettenstrebe, base, basis, bases, vaina, carro posteriore, achtervorklengte, effective top tube, top tube, oberrohr, tube horizontal, tubo superior, tubo orizzontale, bovenbuis"),
        ("n:links", "links, link, glieder, kettenglieder, maillons, maillon, eslabones, eslabon, maglie, maglia, schakels, schakel, links long, links chain, glieder lang, chain links, lnks, lks, gliedern, maillons de chaine, eslabones de cadena, maglie catena, kettingschakels"),
        ("n:size", "size, grosse, rahmengrosse, frame size, taille, taille de cadre, talla, taglia, maat, framemaat, rahmenhohe, rh"),
        ("n:armlength", "arm length, arms long, crank length, crank arms, arm, kurbellange, longueur de manivelle, longueur manivelles, manivelle, manivelles, longitud de biela, largo de biela, lunghezza pedivella, lunghezza pedivelle, cranklengte, kurbelarm, mm arms, crankarm, crankarms, crankarm length, lunghezza bracci, largo bielas, longitud bielas, longueur des manivelles, kurbelarmlange, armlange, cranklengte mm, arm lengte"),
        ("n:year", "year, model year, baujahr, modelljahr, jahr, annee, millesime, ano, modelo, anno, bouwjaar, jaar, from 2016, since"),
        ("n:pressure", "bar max, psi, kpa, pressure, druck, luftdruck, pression, presion, pressione, druk"),
        ("n:price", "eur, euro, usd, gbp, price, preis, prix, precio, prezzo, prijs, article, art, part number, part no, model no, sku, item no, artikelnummer, art nr, ref, reference, ean, shipping, versand, versandkosten, porto, envio, gastos de envio, spedizione, verzending, livraison, frais de port, postage"),
        ("n:engagement", "engagement, points of engagement, teeth ratchet, poe, tpi casing, tpi carcass, carcass, casing, karkasse, carcasse, carcasa, carcassa, karkas, epi"),
        ("n:spokes", "spoke, spokes, speichen, speiche, rayons, radios, raggi, spaken"),
        ("n:torque", "nm, torque, drehmoment, couple, par de apriete, coppia, aanhaalmoment"),
        ("n:bottle", "bottle, bottle cage, bottle cages, flaschenhalter, porte bidon, portabidon, portaborraccia, bidonhouder, eyelets, pack of, stuck, piece, pieces, pcs, qty, quantity, menge, quantite, cantidad, quantita, aantal, warranty, garantie, garantia, garanzia, years, jahre, ans, anos, anni, days, tage, jours, dias, giorni, dagen, bottle bosses, bottle cage bosses, bottle mounts, rack bosses, rack mounts, mudguard bosses, fender bosses, mudguard eyelets, luggage bosses, cargo bosses, gewindeosen, flaschenhalterosen, osen, inserts porte bidon, oeillets porte bagages, anclajes portabidon, fori portaborraccia, attacchi portaborraccia, bidonnokken, nokken bidonhouder, nokken bagagedrager"),
        ("n:sealed", "sealed bearings, cartridge bearings, industrielager, roulements, sealed"),
        ("n:apart", "apart, boss spacing, boss distance, sockelabstand, auseinander, ecartes de, separados, distanti, uit elkaar, abstand, lochabstand der aufnahme, voneinander, d'ecart, d'ecartement, ecartes, entraxe des trous, separadas, de separacion, entre agujeros, distanziati, distanziate, di distanza, van elkaar, hartafstand van de gaten, between holes, hole spacing, bolt spacing, centres apart"),
    ];
}
