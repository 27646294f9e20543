using System.Collections.Immutable;

namespace Lugwork.Reading;

/// <summary>Reads the items of one line for the part of one slot. Every step is bounded, so that the whole is linear in the line.</summary>
internal sealed partial class LineScan
{
    /// <summary>How far marks of one value may stand from each other, items.</summary>
    private const int Reach = 14;

    private const int MostFindings = 200;

    /// <summary>A line with more figures that would be values than this is no line of a sheet.</summary>
    private const int MostTakes = 1_000;

    /// <summary>More figures than this are no line either: each is looked at with what stands around it.</summary>
    private const int MostFigures = 5_000;

    private int _takes;

    private readonly Slot _slot;
    private readonly List<SpecItem> _items;
    private readonly Dictionary<string, SpecField> _fields;
    private readonly int[] _before;
    private readonly int[] _after;
    private readonly bool[] _claimed;

    /// <summary>What the line denies.</summary>
    private readonly List<SpecItem> _denied;
    private readonly bool _forkSetAside;

    /// <summary>The field that one figure alone was read for.</summary>
    private readonly Dictionary<int, string> _fieldOf = [];

    public LineScan(Slot slot, List<SpecItem> items, bool guessed = false)
    {
        _slot = slot;
        _items = items;
        SetAside aside = SetAside.From(slot, items, guessed);
        _denied = aside.Denied;
        _forkSetAside = aside.NamesFork;
        _fields = SpecFields.Of(slot);
        _before = new int[items.Count];
        _after = new int[items.Count];
        _claimed = new bool[items.Count];
        Topics();
    }

    /// <summary>Values by field, one each.</summary>
    public Dictionary<string, LineFinding> Values { get; } = new(StringComparer.Ordinal);

    /// <summary>What can be several, and what was refused.</summary>
    public List<LineDoubt> Doubts { get; } = [];

    private bool Full => Values.Count + Doubts.Count > MostFindings || _takes > MostTakes;

    public void Run()
    {
        if (_items.Count(i => i.IsNumber) > MostFigures)
        {
            Doubts.Add(new("", [], _items[0].Start, _items[^1].End, LineDoubtKind.Refused, "there are too many figures for one line"));
            return;
        }

        if (Outside())
        {
            return;
        }

        Own();
        if (_slot != Slot.Rider)
        {
            ReadLimitsOfMass();
        }

        ReadSlot();
        ReadUseByFigure();
        if (!Full)
        {
            Figures();
            NamedLengths();
            if (_slot == Slot.FrontWheel || _slot == Slot.RearWheel)
            {
                MountainSeat();
            }

            Alternatives();
            Broken();
            BoreWithinTube();
            Audit();
            if (_slot == Slot.Frame && Values.Count > 0 && Doubts.Count == 0 && !Values.ContainsKey("kind"))
            {
                KindOfFrame();
            }
        }
    }

    private void ReadSlot()
    {
        if (_slot == Slot.Frame)
        {
            ReadFrame();
        }
        else if (_slot == Slot.Fork)
        {
            ReadFork();
        }
        else if (_slot == Slot.FrontWheel || _slot == Slot.RearWheel)
        {
            ReadWheel(_slot == Slot.RearWheel);
        }
        else if (_slot == Slot.FrontTyre || _slot == Slot.RearTyre)
        {
            ReadTyre();
        }
        else if (_slot == Slot.FrontInnerTube || _slot == Slot.RearInnerTube)
        {
            ReadTube();
        }
        else if (_slot == Slot.Headset)
        {
            ReadHeadset();
        }
        else if (_slot == Slot.Stem)
        {
            ReadStem();
        }
        else if (_slot == Slot.BottomBracket)
        {
            ReadBracket();
        }
        else if (_slot == Slot.Crankset || _slot == Slot.Chainring)
        {
            ReadRings();
        }
        else if (_slot == Slot.Cassette)
        {
            ReadCassette();
        }
        else if (_slot == Slot.Chain)
        {
            ReadChain();
        }
        else
        {
            ReadSmaller();
        }
    }
}

/// <summary>A value that was read, before it is told.</summary>
/// <param name="Field">Key of the field.</param>
/// <param name="Key">The value.</param>
/// <param name="Start">First character.</param>
/// <param name="End">Behind the last character.</param>
/// <param name="Assumed">What was taken for granted; empty where nothing was.</param>
/// <param name="First">First item.</param>
/// <param name="Last">Last item.</param>
internal sealed record LineFinding(string Field, string Key, int Start, int End, string Assumed, int First = 0, int Last = 0);

/// <summary>Why something was not accepted.</summary>
internal enum LineDoubtKind
{
    Several,
    Conflict,
    Refused,
    Outside,
    Broken,
}

/// <summary>What was not accepted, and what it can be.</summary>
internal sealed record LineDoubt(string Field, ImmutableArray<string> Keys, int Start, int End, LineDoubtKind Kind, string Reason);
