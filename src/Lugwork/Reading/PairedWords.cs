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
    ];
}
