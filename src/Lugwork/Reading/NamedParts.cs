using System.Collections.Frozen;

namespace Lugwork.Reading;

/// <summary>The words by which a line about a part may name parts, in terms of the lexicon; empty where nothing is held against a line. Where the first two are empty a line is only refused that names other parts alone.</summary>
/// <param name="Mates">The part first, then what mates with it: what a line about it may start with.</param>
/// <param name="Itself">What names the part by itself: other words for it, and pieces of it that are named like parts. It counts where the part was only guessed from the line.</param>
/// <param name="Near">What the line may name so that it is not one about other parts only: the part, what it goes to or together with, and what its fields are told by.</param>
internal sealed record NamedParts(string Mates, string Itself, string Near)
{
    private static readonly NamedParts None = new("", "", "");

    /// <summary>By the kind of part as build files have it. Words of the trade: common practice, no source.</summary>
    private static readonly FrozenDictionary<string, NamedParts> Table = new Dictionary<string, NamedParts>(StringComparer.Ordinal)
    {
        ["frame"] = new("t:frame t:post t:dropper t:seatclamp t:bb t:headset t:shock t:axle t:nuts t:hub t:brake t:caliper t:rotor t:tyre t:frontmech t:rearmech t:guidetabs t:chainring t:wheel t:rim", "t:frame", ""),
        ["fork"] = new("t:fork t:headset t:hub t:axle t:brake t:caliper t:rotor t:tyre t:wheel t:rim", "t:fork", ""),
        ["wheel"] = new("t:wheel t:hub t:rim t:axle t:freehub t:rotor t:brake", "t:wheel t:hub t:rim t:axle", "t:wheel t:hub t:rim t:axle t:nuts t:freehub t:rotor t:brake t:caliper t:cassette t:tyre t:tube t:rimtape t:valve t:frame t:fork"),
        ["tyre"] = new("t:tyre t:wheel", "t:tyre", "t:tyre t:wheel t:rim t:tube t:valve t:frame t:fork"),
        ["inner tube"] = new("", "", "t:tube t:valve t:tyre t:wheel t:rim"),
        ["cassette"] = new("t:cassette", "t:cassette", "t:cassette t:chain t:freehub t:hub t:wheel t:rearmech t:shifter"),
        ["chain"] = new("t:chain", "t:chain", "t:chain t:cassette t:chainring t:crank t:rearmech t:frontmech t:shifter t:hub"),
        ["chainring"] = new("t:chainring t:crank", "t:chainring", "t:chainring t:crank t:chain t:bb t:frontmech t:cassette t:frame"),
        ["crankset"] = new("t:crank t:bb t:chainring t:pedal t:axle t:chain", "t:crank t:chainring", "t:crank t:bb t:chainring t:pedal t:axle t:chain t:cassette t:frontmech t:frame"),
        ["bottom bracket"] = new("", "", "t:bb t:crank t:chainring t:frame t:axle"),
        ["headset"] = new("t:headset t:bearing", "t:headset t:bearing", "t:headset t:bearing t:stem t:bar t:fork t:frame"),
        ["headset bearing"] = new("", "", "t:headset t:bearing t:stem t:bar t:fork t:frame"),
        ["stem"] = new("t:stem t:bar t:fork t:headset t:headtube", "t:stem t:bar", "t:stem t:bar t:fork t:headset t:frame"),
        ["handlebar"] = new("t:bar t:grip", "t:bar t:grip", "t:bar t:grip t:stem t:shifter t:lever"),
        ["grips"] = new("t:grip t:bar", "t:grip", "t:bar t:grip t:stem t:shifter t:lever"),
        ["seatpost"] = new("t:post t:dropper t:saddle t:rails t:frame", "t:post t:dropper", "t:post t:dropper t:saddle t:rails t:seatclamp t:frame t:lever"),
        ["seat clamp"] = new("", "", "t:seatclamp t:post t:dropper t:saddle t:frame"),
        ["saddle"] = new("t:saddle t:rails t:fork", "t:saddle t:rails", "t:saddle t:rails t:post"),
        ["pedals"] = new("t:pedal t:crank t:axle", "t:pedal t:axle", "t:pedal t:crank t:axle"),
        ["rear derailleur"] = new("", "", "t:rearmech t:frontmech t:chain t:cassette t:chainring t:crank t:shifter t:hub t:axle t:frame t:bb"),
        ["front derailleur"] = new("", "", "t:rearmech t:frontmech t:chain t:cassette t:chainring t:crank t:shifter t:hub t:axle t:frame t:bb"),
        ["shifter"] = new("t:shifter t:lever t:frontmech t:rearmech t:chain", "t:shifter", "t:shifter t:lever t:brake t:caliper t:rotor t:rim t:rearmech t:frontmech t:chain t:cassette t:chainring t:hub t:bar t:grip t:dropper t:frame"),
        ["brake lever"] = new("", "", "t:shifter t:lever t:brake t:caliper t:rotor t:rim t:rearmech t:frontmech t:chain t:cassette t:chainring t:hub t:bar t:grip t:dropper t:frame"),
        ["caliper"] = new("t:brake t:caliper t:rotor", "t:brake t:caliper", "t:brake t:caliper t:rotor t:lever t:hub t:axle t:wheel t:rim t:tyre t:frame t:fork"),
        ["rim brake"] = new("", "", "t:brake t:caliper t:rotor t:lever t:hub t:axle t:wheel t:rim t:tyre t:frame t:fork"),
        ["rotor"] = new("t:rotor t:brake", "t:rotor", "t:brake t:caliper t:rotor t:lever t:hub t:axle t:wheel t:rim t:tyre t:frame t:fork"),
        ["thru-axle"] = new("t:axle", "t:axle", "t:axle t:nuts t:hub t:wheel t:frame t:fork"),
        ["axle nuts"] = new("", "", "t:axle t:nuts t:hub t:wheel t:frame t:fork"),
        ["rear shock"] = new("", "", "t:shock t:frame"),
        ["tubeless valve"] = new("", "", "t:valve t:rim"),
        ["rim tape"] = new("", "", "t:rimtape t:rim"),
        ["chain guide"] = new("", "", "t:guidetabs t:bb t:chain t:chainring t:crank t:frame"),
        ["rider"] = new("t:rider", "t:rider", ""),
        ["bottom-bracket adapter"] = new("", "", "t:bb t:crank t:chainring t:frame t:axle"),
        ["controls"] = new("", "", "t:shifter t:lever t:brake t:caliper t:rotor t:rim t:rearmech t:frontmech t:chain t:cassette t:chainring t:hub t:bar t:grip t:dropper t:frame"),
        ["dropper"] = new("", "t:dropper t:post", "t:post t:dropper t:saddle t:rails t:seatclamp t:frame t:lever"),
        ["headset cover"] = new("", "", "t:headset t:bearing t:stem t:bar t:fork t:frame"),
        ["preload"] = new("", "", "t:headset t:bearing t:stem t:bar t:fork t:frame"),
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The part itself, the first of what mates.</summary>
    public string Own { get; } = Mates.Split(' ')[0];

    public static NamedParts Of(Slot slot) => Table.GetValueOrDefault(PartForms.Of(slot).Kind, None);
}
