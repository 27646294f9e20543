using System.Collections.Immutable;

namespace Lugwork.Reading;

/// <summary>Lengths of a frame, fork or crank that are fields without a joint of their own, in six languages. A figure beside one is that length where the line says nothing else.</summary>
internal static class LengthWords
{
    private const string Chainstay = "chainstay, chainstays, chain stay, chain stays, chainstay length, chain stay length, cs length, kettenstrebe, kettenstreben, kettenstrebenlange, lange kettenstrebe, lange der kettenstrebe, kettenstreben lange, base, bases, longueur base, longueur de base, longueur des bases, longueur bases, hauban inferieur, vaina, vainas, longitud de vaina, longitud de vainas, longitud vainas, largo de vainas, vaina inferior, foderi, fodero basso, foderi bassi, lunghezza foderi, lunghezza fodero, lunghezza foderi bassi, carro posteriore, lunghezza carro, liggende achtervork, liggende achterbrug, achtervorklengte, lengte achtervork, lengte liggende achtervork, kettingbrug, rear centre, rear center, hinterbaulange, chainstays of, kettenstrebenmass, streben, long. bases, bases arriere, long. vainas, largo vainas, vainas de, lungh. foderi, lungh. carro, foderi orizzontali, lengte kettingbrug, cs";

    private const string HeadTube = "head tube length, headtube length, length of head tube, length of the head tube, ht length, steuerrohrlange, lange steuerrohr, lange des steuerrohrs, steuerkopflange, steuerrohr lange, longueur douille, longueur de douille, longueur de la douille, longueur tube de direction, longueur du tube de direction, longueur de douille de direction, hauteur de douille, longitud tubo de direccion, longitud del tubo de direccion, largo tubo de direccion, longitud pipa, longitud de pipa, longitud de la pipa de direccion, lunghezza tubo sterzo, lunghezza del tubo sterzo, lunghezza tubo di sterzo, balhoofdlengte, balhoofdbuislengte, lengte balhoofdbuis, lengte balhoofd, lengte van de balhoofdbuis, lungh. tubo sterzo, lungh tubo sterzo, lung. tubo sterzo, lunghezza cannotto di sterzo, altezza tubo sterzo, long. tube de direction, long. douille, hauteur tube de direction, hauteur du tube de direction, hauteur douille, steuerrohrhohe, lange steuerkopf, steuerkopfrohrlange, long. pipa, altura pipa, altura de pipa, altura tubo de direccion, largo de pipa, largo pipa, balhoofd lengte, head tube height, headtube height, htl, h/t length";

    private const string CrankLength = "crank length, crankarm length, crank arm length, length of cranks, length of the cranks, kurbellange, kurbelarmlange, lange kurbel, lange der kurbel, lange kurbeln, longueur de manivelle, longueur manivelle, longueur manivelles, longueur des manivelles, longueur de manivelles, manivelles longueur, manivelle longueur, longitud de biela, longitud bielas, longitud de bielas, longitud de las bielas, largo de biela, largo bielas, largo de bielas, bielas largo, lunghezza pedivella, lunghezza pedivelle, lunghezza delle pedivelle, lunghezza della pedivella, cranklengte, lengte crank, lengte cranks, lengte van de crank, crankarmlengte, crank arms, crankarms, kurbelarme, kurbelarm, armlange, arm length, kurbelarmen, kl";

    private const string QFactor = "q factor, qfactor, q faktor, qfaktor, facteur q, factor q, fattore q, tread width, q fattore, qf, pedal tread, q-fak";

    /// <summary>Distances between parts of a frame that no part has a field for, or whose figure is of no interface.</summary>
    public static ImmutableArray<(string Term, string Words)> Rows { get; } =
    [
        ("n:reach", Chainstay),
        ("m:chainstay", Chainstay),
        ("n:reach", HeadTube),
        ("m:headtubelength", HeadTube),
        ("n:armlength", CrankLength),
        ("m:cranklength", CrankLength),
        ("n:reach", QFactor),
        ("m:qfactor", QFactor),
        ("m:spacers", "spacer, spacers, headset spacers, headset spacer, stack of spacers, spacer stack, distanzring, distanzringe, distanzscheiben, spacerturm, spacerstapel, entretoise, entretoises, bague, bagues, espaciador, espaciadores, separadores, distanziale, distanziali, spessori, spessore, afstandsring, afstandsringen, vulring, vulringen"),
        ("m:gravel", "gravel, gravelbike, gravel bike, schotter"),
        ("m:onering", "single ring, one ring, single chainring, einfach, einkettenblatt, ein kettenblatt, mono, monoplateau, mono plateau, simple plateau, un plateau, monoplato, un plato, plato unico, monocorona, una corona, corona singola, enkel blad, enkel, enkelblads, een blad"),
        ("m:tworings", "double, two rings, double ring, zweifach, doppelt, double plateau, deux plateaux, doble plato, dos platos, doppia corona, due corone, dubbel blad, twee bladen, dubbel"),
        ("m:threerings", "triple, three rings, triple ring, dreifach, triple plateau, trois plateaux, triple plato, tres platos, tripla, tre corone, drie bladen"),
        ("m:fixedhub", "starrnabe, fixnabe, doortrapnaaf, doortrapper, starrlauf, starrgang, fixed gear, fixed wheel, scatto fisso, pinon fijo, pignon fixe, pignone fisso, moyeu fixe, buje fijo, mozzo fisso, vaste naaf, vast verzet, fixie, starr, pista fisso, ruota fissa, roue fixe, rueda fija, vast wiel, starres hinterrad"),
        ("m:fixedhub t:hub m:track", "track hub, mozzo pista fisso, mozzo da pista, moyeu piste, moyeu de piste, buje de pista, bahnnabe, baannaaf"),
        ("m:fixedhub t:hub", "fixed hub, fixed gear hub, fixed wheel hub"),
        ("m:lockringthread", "lockring, lock ring, lockring thread, thread for the lockring, left hand lockring, left hand thread, reverse thread lockring, reverse threaded lockring, konterring, konterringgewinde, kontergewinde, gewinde fur konterring, gewinde fur den konterring, gegenring, contre ecrou, filetage contre ecrou, pas contre ecrou, filetage pour contre ecrou, contratuerca, rosca contratuerca, rosca para la contratuerca, rosca para contratuerca, controghiera, ghiera sinistrorsa, filetto controghiera, filetto per controghiera, borgring, draad voor borgring, borgringdraad, contraring, linksgewinde, linkse draad, rosca izquierda, filetage a gauche, filetto sinistro, ghiera, con ghiera, controdado, controdado sinistro, con controdado, controdado sinistrorso, linksgangige konterring, left lockring, contratuerca izquierda, contre ecrou a gauche, linkse borgring"),
        ("m:bmx", "bmx, bmx bike"),
        ("m:onesprocket", "for one sprocket, one sprocket, single sprocket, fur ein ritzel, ein ritzel, fur ein einzelnes ritzel, pour un pignon, un pignon, un seul pignon, para un pinon, un pinon, un solo pinon, per un pignone, un pignone, un solo pignone, voor een tandwiel, een tandwiel, enkel tandwiel"),
        ("m:threelug", "3 lug, three lug, three lugs, 3 lugs, drei nasen, 3 nasen, dreinasen, dreinasig, drei nocken, 3 nocken, trois ergots, 3 ergots, a trois ergots, tres pestanas, 3 pestanas, tres muescas, 3 muescas, tre alette, 3 alette, tre tacche, 3 tacche, tre denti, drie nokken, 3 nokken, drie nokjes, drienoks"),
        ("m:trial", "trial, trials, trialrahmen, trialbike"),
        ("m:sleeve", "casquillo, casquillos, camisa, bussola, boccola, manchon, hulse, huls, bus, avec une douille, avec douille, avec bague, sleeve, bushing"),
        ("m:tyrewidth", "tyre width, tire width, width of tyre, largeur de pneu, largeur pneu, largeur du pneu, ancho de cubierta, ancho cubierta, ancho de neumatico, larghezza copertone, larghezza del copertone, reifenbreite, breite reifen, bandbreedte, breedte band, section pneu, section"),
        ("m:needs", "needs, wants, requires, takes, goes in, goes into, braucht, benotigt, necessite, demande, il faut, necesita, requiere, lleva, richiede, vuole, serve, vereist, heeft nodig, past in, passt in, nodig, accepts, accepte, acepta, accetta, accepteert"),
        ("m:than", "longer than, shorter than, wider than, narrower than, deeper than, thicker than, thinner than, langer als, kurzer als, breiter als, schmaler als, plus long que, plus court que, plus large que, mas largo que, mas corto que, mas ancho que, mas estrecho que, piu lungo di, piu corto di, piu largo di, piu stretto di, langer dan, korter dan, breder dan, smaller dan"),
        ("u:other", "clicks, click, klicks, klick, klikken, klik, clics, clic, scatti, engagement points, points of engagement, rastpunkte, eingriffspunkte, einrastpunkte, rasten, points d'engagement, puntos de anclaje, puntos de enganche, punti d'ingaggio, punti di innesto, ingrijppunten, aangrijpingspunten, pawls, klinken, sperrklinken, cliquets, trinquetes, cricchetti, pallen, splines, cannelures, keile, keilnuten, nuten, estrias, scanalature, spiebanen, keys, cross, fach gekreuzt, croix, spline, keil, cannelure, estria, scanalatura, spiebaan"),
    ];
}
