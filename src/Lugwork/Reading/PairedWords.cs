using System.Collections.Immutable;

namespace Lugwork.Reading;

/// <summary>Values that are said by a thing and a word for its state, in either order: "split seat stay", "seat stay split". Each word of the first list goes with each of the second.</summary>
internal static class PairedWords
{
    public static ImmutableArray<(string Term, string Things, string States, bool Turned)> Rows { get; } =
    [
        ("v:RearTriangle=opens", "seat stay, seat stays, seatstay, seatstays, chain stay, chainstay, stay, rear triangle", "split, splittable, opening, openable, separable, belt split, belt split in the, split in the, split for belt", true),
        ("v:RearTriangle=opens", "sitzstrebe, sattelstrebe, kettenstrebe, strebe, hinterbau, rahmen fur riemen, ausfallende", "teilbar, teilbare, teilbarer, teilbares, geteilt, geteilte, trennbar, trennbare, zu offnen, offenbar", true),
        ("v:RearTriangle=opens", "hauban, haubans, base, triangle arriere, cadre pour courroie, patte", "ouvrant, ouvrante, ouvrable, demontable, separable, divisible, fendu, a ouverture, qui s'ouvre", true),
        ("v:RearTriangle=opens", "tirante, vaina, triangulo trasero, cuadro para correa", "abrible, desmontable, divisible, partido, partida, separable, que se abre", true),
        ("v:RearTriangle=opens", "fodero, foderi, carro, carro posteriore, triangolo posteriore, tirante, telaio per cinghia", "apribile, apribili, divisibile, scomponibile, smontabile, separabile, che si apre", true),
        ("v:RearTriangle=opens", "achtervork, staande achtervork, liggende achtervork, achterbrug, achterdriehoek, frame voor riem", "deelbaar, deelbare, splitsbaar, splitsbare, te openen, opengaand, opengaande", true),
        ("v:RearTriangle=opens", "frame, rahmen, cadre, cuadro, telaio", "split for belt, split for belts, split for belt drive, belt split, belt splitter, fur riemen teilbar, teilbar fur riemen, ouvrable pour courroie, ouvrant pour courroie, abrible para correa, apribile per cinghia, deelbaar voor riem", false),
        ("v:RearTriangle=opens", "split, deelbaar, teilbarer, offenbarer", "frame for belt, frame for belt drive, frame for belts, frame voor riem, frame voor riemaandrijving, rahmen fur riemen, rahmen fur riemenantrieb", false),
        ("v:DropoutSlot=horizontal", "dropouts, rear dropouts, fork ends, rear ends, frame ends, drop outs, slots", "horizontal, rear facing", true),
        ("v:DropoutSlot=horizontal", "track", "fork ends, drop outs, rear ends, type dropouts, frame ends", false),
        ("v:DropoutSlot=horizontal", "ausfallenden, ausfallende, ausfaller, hinterradausfallenden, ausfallenden hinten", "horizontal, horizontale, horizontalen, waagerecht, waagerechte, waagrecht, waagrechte, waagerechten", true),
        ("v:DropoutSlot=horizontal", "pattes, pattes arriere, pattes de cadre, patte arriere, fourches arriere", "horizontales, horizontale, piste, de piste", true),
        ("v:DropoutSlot=horizontal", "punteras, punteras traseras, puntera trasera, patillas", "horizontales, horizontal, de pista, pista", true),
        ("v:DropoutSlot=horizontal", "forcellini, forcellini posteriori, forcellino posteriore, punte", "orizzontali, orizzontale, da pista, pista", true),
        ("v:DropoutSlot=horizontal", "dropouts, achterpads, achterpadden, padden, pads, achterpatten, uitvaleinden", "horizontale, horizontaal", true),
        ("v:DropoutSlot=horizontal", "baan", "pads, padden, uitvaleinden, dropouts, achterpadden", false),
        ("v:DropoutSlot=vertical", "dropouts, rear dropouts, fork ends, drop outs, slots", "vertical", true),
        ("v:DropoutSlot=vertical", "ausfallenden, ausfallende, ausfaller, hinterradausfallenden, ausfallenden hinten", "vertikal, vertikale, vertikalen, senkrecht, senkrechte, senkrechten", true),
        ("v:DropoutSlot=vertical", "pattes, pattes arriere, pattes de cadre, patte arriere", "verticales, verticale", true),
        ("v:DropoutSlot=vertical", "punteras, punteras traseras, puntera trasera", "verticales, vertical", true),
        ("v:DropoutSlot=vertical", "forcellini, forcellini posteriori, forcellino posteriore", "verticali, verticale", true),
        ("v:DropoutSlot=vertical", "dropouts, achterpads, achterpadden, padden, pads, achterpatten", "verticale, verticaal", true),
        ("v:ChainGuideMount=BB-mount", "mounted on, mounts to, mounted to, fits on, fixed to, clamps to, clamped on, mounting on, mount on", "bottom bracket, bottom bracket shell, bb, bb shell, bb cup", false),
        ("v:ChainGuideMount=BB-mount", "montage am, befestigung am, montage uber das, befestigung uber das, montiert am, montage mit dem, am", "tretlager, innenlager, tretlagergehause, innenlagergehause", false),
        ("v:ChainGuideMount=BB-mount", "montage sur, fixation sur, se monte sur, monte sur, fixe sur, montage par, fixation par, fixation au, a monter sur", "boitier, boitier de pedalier, jeu de pedalier, pedalier", false),
        ("v:ChainGuideMount=BB-mount", "montaje en, fijacion en, anclaje en, se monta en, montaje sobre, para montar en, montada en, fijado en, anclaje al, anclaje a", "pedalier, eje de pedalier, caja, caja de pedalier", false),
        ("v:ChainGuideMount=BB-mount", "montaggio su, montaggio sul, montaggio al, attacco sul, attacco al, da montare sul, si monta sul, fissaggio sul, fissaggio al, montato sul, montaggio sulla", "movimento centrale, movimento, scatola movimento, scatola, scatola del movimento", false),
        ("v:ChainGuideMount=BB-mount", "montage op, montage aan, bevestiging aan, bevestiging op, gemonteerd op, te monteren op, op", "trapas, bracket, brackethuis, bracketas, trapashuis", false),
        ("v:ValveStem=presta", "valve, valves, valv, ventil, ventile, ventiel, ventielen, valvola, valvole, valvula, valvulas, ventilart, ventiltyp, ventieltype, type de valve, valve type, tipo di valvola, tipo valvola, tipo de valvula, tipo valvula, type, typ, tipo", "french, francaise, francais, franzosisch, franzosisches, franz, frances, francesa, francese, frans, franse, presta, sclaverand, fv", true),
        ("v:ValveStem=schrader", "valve, valves, valv, ventil, ventile, ventiel, ventielen, valvola, valvole, valvula, valvulas, ventilart, ventiltyp, ventieltype, type de valve, valve type, tipo di valvola, tipo valvola, tipo de valvula, tipo valvula, type, typ, tipo", "schrader, american, americaine, americana, americano, amerikanisch, amerikanisches, amerikaans, amerikaanse, auto", true),
        ("v:ValveStem=dunlop", "valve, valves, valv, ventil, ventile, ventiel, ventielen, valvola, valvole, valvula, valvulas, ventilart, ventiltyp, ventieltype, type de valve, valve type, tipo di valvola, tipo valvola, tipo de valvula, tipo valvula, type, typ, tipo", "dunlop, woods, blitz, hollandisch, hollandaise, holandesa, olandese, hollands, hollandse, engels, engelse, anglaise, inglesa, inglese", true),
        ("v:CassettePattern=fixed-sprocket", "sprocket, sprockets, cog, cogs, ritzel, ritzeln, zahnkranz, pignon, pignons, pinon, pinones, pignone, pignoni, tandwiel, tandwielen, kransje", "fixed, fixed gear, fixie, starr, starrgang, fix, fixe, fijo, fisso, fissi, fijos, de pista, da pista, piste, de piste, vast, vaste, doortrap, track, starres, starre, bahn", true),
        ("v:CassettePattern=fixed-sprocket", "fixed, fixed gear, fixie, starrgang, starrlauf, fix, track, bahn, doortrap, vast, vaste, baan", "sprocket, cog, ritzel, tandwiel, kransje", false),
        ("v:CassettePattern=3-lug", "sprocket, sprockets, cog, cogs, ritzel, ritzeln, zahnkranz, pignon, pignons, pinon, pinones, pignone, pignoni, tandwiel, tandwielen, kransje", "3 lug, three lug, 3 lugs, three lugs, with 3 lugs, with three lugs, 3 nasen, drei nasen, mit 3 nasen, mit drei nasen, 3 nocken, drei nocken, mit drei nocken, 3 ergots, trois ergots, a 3 ergots, a trois ergots, 3 pestanas, tres pestanas, de 3 pestanas, de tres pestanas, con tres pestanas, con 3 pestanas, 3 muescas, de 3 muescas, 3 alette, tre alette, a 3 alette, a tre alette, 3 tacche, tre tacche, a tre tacche, 3 denti interni, 3 nokken, drie nokken, met 3 nokken, met drie nokken, 3 nokjes, drie nokjes", false),
        ("v:CassettePattern=3-lug", "3 lug, three lug, 3 nasen, dreinasen, drei nasen, 3 nocken, dreinocken, 3 nokken, drie nokken, drienokken, 3 nokjes, 3 noks", "sprocket, sprockets, cog, cogs, ritzel, zahnkranz, tandwiel, kransje", false),
        ("v:CassettePattern=carrier", "sprocket, cog, ritzel, pignon, pinon, pignone, tandwiel", "for carrier, for splined carrier, for a carrier, fur ritzeltrager, fur den ritzeltrager, fur trager, pour porte pignon, pour porte pignons, para portapinon, para porta pinon, per portapignone, per porta pignone, voor tandwieldrager, voor de tandwieldrager, voor tandwielhouder", false),
    ];
}
