using System.Collections;
using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;

namespace Lugwork;

/// <summary>What every slot of this bicycle has to be, read from the joints and the parts there are.</summary>
[DebuggerDisplay("{Count} slots")]
public sealed partial class NeedsSheet : IReadOnlyList<Need>
{
    private readonly Build _build;
    private readonly ImmutableArray<Slot> _slots;

    // A need is worked out when it is first asked for: a front end that shows one slot pays for one.
    private readonly Need?[] _needs;

    private NeedsSheet(Build build, ImmutableArray<Slot> slots)
    {
        _build = build;
        _slots = slots;
        _needs = new Need?[slots.Length];
    }

    /// <inheritdoc/>
    public int Count => _slots.Length;

    /// <inheritdoc/>
    public Need this[int index] => _needs[index] ??= new Need(_slots[index], _build[_slots[index]] is not null, Lines(_slots[index], _build));

    /// <summary>The need of one slot; null where this kind of bicycle has no such slot.</summary>
    /// <param name="slot">Any slot.</param>
    public Need? Of(Slot slot)
    {
        ArgumentNullException.ThrowIfNull(slot);
        return _slots.IndexOf(slot) is var at and >= 0 ? this[at] : null;
    }

    /// <inheritdoc/>
    public IEnumerator<Need> GetEnumerator() => Enumerable.Range(0, Count).Select(i => this[i]).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <summary>Every need in short, one a line: the first things that each asks for. <see cref="Need.Rows"/> says all of it.</summary>
    public override string ToString() => string.Join(Environment.NewLine, this);

    internal static NeedsSheet Of(Build build) => new(
        build,
        [.. BicycleKind.Required(build.Frame, build[Slot.Fork] as Fork, build[Slot.FrontWheel] as Wheel, build[Slot.RearWheel] as Wheel).Where(s => s != Slot.Frame)]);

    /// <summary>A line for each interface of the slot; a second one of the same joint only where it says something of its own. A joint that is of a part such as a bare crank asks nothing beside one that is not.</summary>
    private static ImmutableArray<NeedLine> Lines(Slot slot, Build build)
    {
        ImmutableArray<NeedLine>.Builder lines = ImmutableArray.CreateBuilder<NeedLine>();
        HashSet<string> said = [];
        build = build.ReadingsAside(slot);
        foreach (Joint joint in JointTable.All.Where(j => j.Slots.Contains(slot) && (!j.IsOfCondition || j.IsFilled(build)) && !j.GivesWayIn(build) && j.OnlyWith.All(i => build[j.Inputs[i].Slot] is not { } part || j.IsStated(i, part))))
        {
            bool first = true;
            foreach (JointInput input in joint.Inputs.Where(i => i.Slot == slot && !i.IsReadWhenBuilt))
            {
                NeedLine line = NeedLine.Of(joint, input, build);
                if (said.Add(line.ToString()) && (first || line.SaysSomething))
                {
                    lines.Add(line);
                }

                first = false;
            }
        }

        LeaveOut(lines);
        return lines.ToImmutable();
    }

    /// <summary>A value that one joint keeps out is not told as right by another, as long as some value is left that goes with all of them.</summary>
    private static void LeaveOut(ImmutableArray<NeedLine>.Builder lines)
    {
        foreach (IGrouping<(string Field, string Figure), NeedLine> same in lines.Where(l => l.IsListed).GroupBy(l => (l.Field, l.Input.Figure)))
        {
            NeedLine[] limits = [.. lines.Where(l => l.IsLimit && l.Field == same.Key.Field && same.Any(s => s.Input.Called == l.Input.Called))];
            if (limits.Length == 0 && !same.Skip(1).Any())
            {
                continue;
            }

            HashSet<long> all = [.. same.SelectMany(l => l.Codes)];
            HashSet<long> left = [.. all.Where(c => same.All(l => !l.KeepsOut(c)) && limits.All(l => !l.KeepsOutSize(same.First().Input.Show(c))))];
            if (left.Count == 0)
            {
                // Nothing goes with all of them: each says so behind its own values.
                foreach (NeedLine line in same)
                {
                    line.HasRival = true;
                }

                continue;
            }

            bool isTold = same.Any(l => !left.All(l.Takes));
            foreach (NeedLine line in same)
            {
                line.Told = left;
                line.IsCovered = isTold && left.All(line.Takes);
                isTold = true;
            }
        }

        // Of the state of a part a joint about wear alone says nothing that is to be bought by.
        if (lines.Any(l => !l.IsIdle && !l.IsOfState))
        {
            foreach (NeedLine line in lines.Where(l => l.IsIdle || l.IsOfState))
            {
                line.IsCovered = true;
            }
        }
    }
}

/// <summary>What one slot has to be.</summary>
public sealed class Need
{
    internal Need(Slot slot, bool isFilled, ImmutableArray<NeedLine> lines)
    {
        Slot = slot;
        IsFilled = isFilled;
        Lines = lines;
    }

    /// <summary>The slot.</summary>
    public Slot Slot { get; internal init; }

    /// <summary>There is a part in it already.</summary>
    public bool IsFilled { get; internal init; }

    /// <summary>A line a joint.</summary>
    public ImmutableArray<NeedLine> Lines { get; internal init; }

    /// <summary>
    /// The lines to be read: first each that is settled or asks for something, then one for each part that is not there yet, with all that goes by
    /// it: "goes by the front rotor: largest front rotor, front brake mount". A value that one joint keeps out is not told as right by another about the
    /// same thing, and a joint that says no more than that has no row of its own; <see cref="Lines"/> has each joint.
    /// </summary>
    public ImmutableArray<string> Rows
    {
        get
        {
            OrderedDictionary<Slot, List<string>> others = [];
            ImmutableArray<string>.Builder rows = ImmutableArray.CreateBuilder<string>();
            foreach (NeedLine line in Lines)
            {
                if (line.Follows.IsEmpty && !line.IsCovered && !rows.Contains(line.ToString()))
                {
                    rows.Add(line.ToString());
                }

                foreach (Slot other in line.Follows)
                {
                    List<string> names = others.TryGetValue(other, out List<string>? known) ? known : others[other] = [];
                    if (!names.Contains(line.Input.Called))
                    {
                        names.Add(line.Input.Called);
                    }
                }
            }

            rows.AddRange(others.Select(o => $"goes by the {o.Key.Name}: {string.Join(", ", o.Value)}"));
            return rows.ToImmutable();
        }
    }

    /// <summary>
    /// In short, on one line, the first things that the slot asks for: "seatpost: seatpost diameter 27.2, with a shim or adapter 25, 25.4, 26, 26.8; post head:
    /// follows the saddle; and 8 more". What it leaves out it counts; <see cref="Rows"/> and <see cref="Lines"/> say all of it.
    /// </summary>
    public override string ToString() => NeedText.OneLine(this);
}

/// <summary>What one joint asks of a slot.</summary>
public sealed class NeedLine
{
    private readonly ImmutableArray<(long Code, Verdict Verdict)> _cells;
    private readonly JointInput _input;
    private readonly string? _open;
    private readonly long? _least;
    private readonly long? _most;

    // What the other inputs are, for a size that no table has, and for a length beside one of several or measured limits.
    private CandidateRow _row;

    private NeedLine(Joint joint, JointInput input, ImmutableArray<(long Code, Verdict Verdict)> cells, long? least, long? most, string? open)
    {
        Joint = joint;
        _input = input;
        _cells = cells;
        _open = open;
        _least = least;
        _most = most;
    }

    /// <summary>The joint that asks.</summary>
    public Joint Joint { get; }

    private static readonly Comparer<(long Code, Verdict Verdict)> ByCode = Comparer<(long Code, Verdict Verdict)>.Create((a, b) => a.Code.CompareTo(b.Code));

    private bool HasTwin => Joint.Inputs.Any(i => i != _input && i.Slot == _input.Slot && i.Field == _input.Field);

    internal JointInput Input => _input;

    /// <summary>The line is a list of values, with nothing to be filled or measured before.</summary>
    internal bool IsListed => _open is null && !_input.IsLength && !_cells.IsEmpty;

    /// <summary>The joint asks nothing here: every value goes.</summary>
    internal bool IsIdle => _open is null && (_input.IsLength ? AnyLength : !_cells.IsEmpty && _cells.All(c => c.Verdict == Verdict.Fits));

    internal IEnumerable<long> Codes => _cells.Select(c => c.Code);

    /// <summary>The joint refuses the value whatever is still open, or, of a field that says two things, takes others alone.</summary>
    internal bool KeepsOut(long code) => Judge(code) is Verdict.DoesNotFit or Verdict.Unsafe || (HasTwin && Judge(code) == Verdict.NeedsMeasuring && _cells.Any(c => c.Verdict == Verdict.Fits));

    /// <summary>A least or greatest length of the field.</summary>
    internal bool IsLimit => _open is null && _input.IsLength && !IsOther && !AnyLength;

    /// <summary>A size that is told by its millimetres is past the limit.</summary>
    internal bool KeepsOutSize(string millimetres) =>
        decimal.TryParse(millimetres, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal size) && size is > 0 and <= 100_000
        && Judge(Nanometres.OfMillimetres(size).Value) is Verdict.DoesNotFit or Verdict.Unsafe;

    /// <summary>The state of the part, of which a joint asks that is about wear.</summary>
    internal bool IsOfState => _open is null && Field == "condition" && !Joint.IsOfCondition;

    /// <summary>Nothing goes with all the joints that ask about the same field.</summary>
    internal bool HasRival { get; set; }

    /// <summary>The value fits as it is.</summary>
    internal bool Takes(long code) => Judge(code) == Verdict.Fits;

    /// <summary>All that the line says is told by another line about the same field, which leaves out what this one keeps out, or it asks nothing.</summary>
    internal bool IsCovered { get; set; }

    /// <summary>The values that no line about the same field keeps out; null where this line is alone.</summary>
    internal HashSet<long>? Told { get; set; }

    internal bool IsOpen => _open is not null;

    /// <summary>Nothing that is known goes here.</summary>
    internal bool KeepsAllOut => !AnyLength && (_open is NoLength or NoFigure || (_open is null && !_input.IsLength && _cells.All(c => c.Verdict is Verdict.DoesNotFit or Verdict.Unsafe)));

    /// <summary>Something does not go here, or not without a bridge.</summary>
    internal bool KeepsSomeOut => _open is null && (_input.IsLength ? SaysSomething : _cells.Any(c => c.Verdict is not (Verdict.Fits or Verdict.NeedsMeasuring)));

    private const string NoLength = "no length is right";

    private const string NoFigure = "no figure is right";

    private const string NoneSettles = "none settles it; measure on the bicycle";

    /// <summary>What is open without how it is measured, a few words each.</summary>
    internal ImmutableArray<string> OpenInShort { get; private set; } = [];

    internal bool SaysSomething => _open is null && (_input.IsLength ? _least is not null || _most is not null : _cells.Select(c => c.Verdict).Distinct().Skip(1).Any());

    private bool AnyLength { get; init; }

    /// <summary>The slots that have to be filled before anything can be said, where nothing else is open; empty where something is said or to be measured.</summary>
    internal ImmutableArray<Slot> Follows { get; private set; } = [];

    /// <summary>The field of the part that it asks about: "diameter".</summary>
    public string Field => _input.Field;

    /// <summary>Keys that fit as they are; empty where something has to be filled or measured before it can be said.</summary>
    public ImmutableArray<string> Accepted => Keys(Verdict.Fits);

    /// <summary>Keys that fit with a bridge; empty where something has to be filled or measured before it can be said.</summary>
    public ImmutableArray<string> WithBridge => Keys(Verdict.NeedsPart);

    /// <summary>The least length, where it is a length.</summary>
    public Dimension? Least => !IsOther && _least is { } least ? Dimension.OfFitCode(least) : null;

    /// <summary>The greatest length, where it is a length.</summary>
    public Dimension? Most => !IsOther && _most is { } most ? Dimension.OfFitCode(most) : null;

    /// <summary>The least load, where it is a load.</summary>
    public Load? LeastLoad => _input.IsMass && _least is { } least ? Load.OfFitCode(least) : null;

    /// <summary>The greatest load, where it is a load.</summary>
    public Load? MostLoad => _input.IsMass && _most is { } most ? Load.OfFitCode(most) : null;

    /// <summary>The least angle, where it is an angle.</summary>
    public FrameAngle? LeastAngle => _input.IsAngle && _least is { } least ? FrameAngle.OfFitCode(least) : null;

    /// <summary>The greatest angle, where it is an angle.</summary>
    public FrameAngle? MostAngle => _input.IsAngle && _most is { } most ? FrameAngle.OfFitCode(most) : null;

    /// <summary>A plain quantity that is no length.</summary>
    private bool IsOther => _input.IsMass || _input.IsAngle;

    /// <summary>What to measure or fill before it can be said, or that only the frame maker's own part goes here or its maker has to be asked; null where it is said.</summary>
    public string? OpenBecause => _open;

    /// <summary>The verdict that a value of the field gets from this joint, also where the line is told as open because a part that decides is not there yet; needs measuring where the joint does not say.</summary>
    /// <param name="code">An integer code of the field: a fit code, or nanometres for a length. A length of zero, below or above 100 m is none and needs measuring, and so is a load of zero, below or above 500 kg, and an angle of zero, below or above 180 degrees.</param>
    public Verdict Judge(long code)
    {
        if (_input.IsLength)
        {
            return code <= 0 || code > Longest(_input) ? Verdict.NeedsMeasuring
                : AnyLength ? Verdict.Fits
                : _least is null && _most is null ? Unlisted(code)
                : HasHoles ? SomeFits(code) ? Verdict.Fits : Verdict.DoesNotFit
                : _least is { } least && code < least ? Verdict.DoesNotFit
                : _most is { } most && code > most ? Verdict.DoesNotFit
                : Verdict.Fits;
        }

        int at = _cells.BinarySearch((code, default), ByCode);
        return at >= 0 ? _cells[at].Verdict
            : _cells.IsEmpty ? Verdict.NeedsMeasuring
            : _input.Family != 0 ? Unlisted(code)
            : Verdict.DoesNotFit;
    }

    /// <summary>What else the part is moves the limits, such as the wheel that a reach was read with: between the least and the greatest length there may be some that are right with none.</summary>
    private bool HasHoles => Joint.Relation is ICutsByOthers && Joint.Inputs.Any(i => i != _input && i.Slot == _input.Slot);

    private bool SomeFits(long code)
    {
        CandidateRow row = _row;
        row[Joint.Inputs.IndexOf(_input)] = new Candidates(KnownState.Value, code, code, null);
        bool some = false;
        Joint.Visit(row, (_, outcome) => !(some |= outcome.Verdict == Verdict.Fits));
        return some;
    }

    private Verdict Unlisted(long code)
    {
        CandidateRow row = _row;
        row[Joint.Inputs.IndexOf(_input)] = new Candidates(KnownState.Value, code, code, null);
        return Best(Joint, _input, row);
    }

    /// <summary>One line of the sheet.</summary>
    public override string ToString() => Line(inShort: false);

    /// <summary>The line without how something is measured, and with many values to be checked counted, not listed.</summary>
    internal string InShort() => OpenInShort is [var first, .. var others]
        ? $"{_input.Called}: {first}{(others.Length > 0 ? $" and {others.Length} more" : "")}" : Line(inShort: true);

    private string Line(bool inShort)
    {
        string name = _input.Called;
        if (_open is not null)
        {
            return $"{name}: {_open}";
        }

        if (_input.IsLength)
        {
            string unit = IsOther ? "" : _input.Unit;
            string from = _least is { } least ? $"at least {_input.Show(least)}{unit}" : "";
            string to = _most is { } most ? $"at most {_input.Show(most)}{unit}" : "";
            return AnyLength ? $"{name} of any {(IsOther ? "figure" : "length")}" : $"{name} {from}{(from.Length > 0 && to.Length > 0 ? ", " : "")}{to}";
        }

        if (IsIdle)
        {
            return $"{name}: any";
        }

        NeedList list = new(_input, Codes, inShort);
        string straight = list.Of(CodesOf(Verdict.Fits));
        string bridged = list.Of(CodesOf(Verdict.NeedsPart)) is { Length: > 0 } mended ? $"with a shim or adapter {mended}" : "";
        ImmutableArray<long> ask = HasTwin ? [] : CodesOf(Verdict.NeedsMeasuring);
        if (straight.Length == 0 && bridged.Length == 0 && !_cells.IsEmpty && _cells.All(c => c.Verdict == Verdict.NeedsMeasuring) && !HasTwin)
        {
            return $"{name}: follows the rest of the {_input.Slot.Name}";
        }

        string asked = ask.IsEmpty ? ""
            : inShort && !list.IsShort(ask) && straight.Length + bridged.Length > 0 ? $"{ask.Length} more to be checked" : $"to be checked {list.Of(ask)}";
        string all = string.Join(", ", new[] { straight, bridged, asked }.Where(s => s.Length > 0));
        return $"{name} {(all.Length == 0 ? "none known fits" : all)}{(HasRival ? ", and nothing goes with all that ask about it" : "")}";
    }

    /// <summary>What the other slots ask of one interface of a slot; the rest of its part counts as not chosen yet.</summary>
    internal static NeedLine Of(Joint joint, JointInput input, Build build)
    {
        Slot slot = input.Slot;
        CandidateRow row = default;
        List<string> open = [];
        List<string> inShort = [];
        List<Slot> empty = [];
        for (int i = 0; i < joint.Inputs.Length; i++)
        {
            JointInput other = joint.Inputs[i];
            row[i] = other.Slot != slot && build[other.Slot] is { } part ? other.Read(part)
                : other.IsReadWhenBuilt ? new Candidates(KnownState.None, 0, 0, null) : default;
            if (other.Slot != slot && !row[i].IsSettled)
            {
                if (build[other.Slot] is null)
                {
                    empty.Add(other.Slot);
                }

                string words = build[other.Slot] is null ? $"follows the {other.Slot.Name}"
                    : row[i].IsOutside ? InWords(row[i])
                    : other.Called.StartsWith("how ", StringComparison.Ordinal) || other.Called.StartsWith("what ", StringComparison.Ordinal) ? $"find out {other.Called} first"
                    : $"measure the {other.Called} first";
                inShort.Add(words);
                open.Add(build[other.Slot] is null || row[i].IsOutside ? words : $"{words} ({other.Measure})");
            }
        }

        // Beside the frame maker's own or what is outside the library nothing else has to be known.
        if (open.Exists(IsOutside))
        {
            open.RemoveAll(o => !IsOutside(o));
            inShort.RemoveAll(o => !IsOutside(o));
        }

        NeedLine line = input.IsLength ? OfLength(joint, input, row, open) : OfKeys(joint, input, row, open, empty.Count > 0);
        line.OpenInShort = line._open is null ? [] : [.. inShort.Distinct()];
        if (line._open is not null && open.Count == empty.Count)
        {
            line.Follows = [.. empty.Distinct()];
        }

        return line;
    }

    private const string OnlyOwn = "only the frame maker's own part";

    private const string NotCovered = "outside this library, ask its maker";

    private static bool IsOutside(string open) => open.EndsWith(OnlyOwn, StringComparison.Ordinal) || open.EndsWith(NotCovered, StringComparison.Ordinal);

    private static string InWords(in Candidates candidates)
    {
        string words = candidates.State == KnownState.FrameSpecific ? OnlyOwn : NotCovered;
        return Outside.FamilyOf(candidates) is { } family ? $"{family.TradeName}: {words}" : words;
    }

    private static NeedLine OfKeys(Joint joint, JointInput input, CandidateRow row, List<string> open, bool isAlone)
    {
        int at = joint.Inputs.IndexOf(input);
        ImmutableArray<(long Code, Verdict Verdict)> cells = NeedMemory.Of(joint, at, row, asked => Cells(joint, at, asked));

        // Where nothing is refused, and a part that decides is not there yet or most values are still open, what fits is what the joint does not ask about: it is no answer to what has to be bought.
        int asked = cells.Count(c => c.Verdict == Verdict.NeedsMeasuring);
        bool isIdle = open.Count > 0 && asked > 0 && cells.All(c => c.Verdict is Verdict.Fits or Verdict.NeedsMeasuring) && (isAlone || asked > cells.Length / 2);
        bool settles = !isIdle && cells.Any(c => c.Verdict is Verdict.Fits or Verdict.NeedsPart);
        return new(joint, input, cells, null, null, settles || open.Count == 0 ? null : string.Join(", ", open.Distinct())) { _row = row };
    }

    /// <summary>Whatever the value is, the other figures leave it open: then nothing goes in by it, and nothing is kept out.</summary>
    private static bool AllAreAsked(Joint joint, int at, CandidateRow row)
    {
        row[at] = default;
        bool asked = true;
        joint.Visit(row, (_, outcome) => asked &= outcome.Verdict == Verdict.NeedsMeasuring);
        return asked;
    }

    /// <summary>The verdict of every value that the input can have, in the order of their codes.</summary>
    private static ImmutableArray<(long Code, Verdict Verdict)> Cells(Joint joint, int at, CandidateRow row)
    {
        JointInput input = joint.Inputs[at];
        Dictionary<long, Verdict> cells = new(input.Domain.Length);
        IEnumerable<long> codes = input.Domain;
        for (int i = 0; i < joint.Inputs.Length; i++)
        {
            // An open size may be one that no table has.
            if (i != at && input.Family != 0 && !joint.Inputs[i].IsLength && joint.Inputs[i].Family == input.Family && row[i].State is KnownState.Value or KnownState.OneOf)
            {
                codes = codes.Concat(row[i].Codes ?? [row[i].Low]).Distinct();
            }
        }

        foreach (long code in codes)
        {
            row[at] = new Candidates(KnownState.Value, code, code, null);
            cells[code] = Best(joint, input, row);
        }

        return [.. cells.Select(c => (c.Key, c.Value)).OrderBy(c => c.Key)];
    }

    /// <summary>The verdict of one value; where its field says a second thing too, such as a tyre's width and bead seat, the best one that the field allows.</summary>
    private static Verdict Best(Joint joint, JointInput input, CandidateRow row)
    {
        int twin = -1;
        for (int i = 0; i < joint.Inputs.Length; i++)
        {
            twin = joint.Inputs[i] != input && joint.Inputs[i].Slot == input.Slot && joint.Inputs[i].Field == input.Field ? i : twin;
        }

        if (twin < 0)
        {
            return joint.Common(row);
        }

        Verdict best = Verdict.Unsafe;
        foreach (long code in joint.Inputs[twin].Domain)
        {
            row[twin] = new Candidates(KnownState.Value, code, code, null);
            Verdict verdict = joint.Common(row);
            best = verdict < best ? verdict : best;
            if (best == Verdict.Fits)
            {
                break;
            }
        }

        return best;
    }

    private static NeedLine OfLength(Joint joint, JointInput input, CandidateRow row, List<string> open)
    {
        // The limits are other lengths: the least and greatest value that is still right lies at one of them.
        int at = joint.Inputs.IndexOf(input);
        if (open.Count > 0)
        {
            // What does not matter is not asked for, such as the designated width of a spindle that has none.
            bool idle = NeedMemory.Of(joint, at, row, asked => joint.Common(asked) == Verdict.Fits);
            return new(joint, input, [], null, null, idle ? null : string.Join(", ", open.Distinct())) { AnyLength = idle, _row = row };
        }

        (long? least, long? most, bool any, bool openEnded) = NeedMemory.Of(joint, at, row, asked => Limits(joint, at, asked));
        string none = !any && AllAreAsked(joint, at, row) ? NoneSettles : input.IsMass || input.IsAngle ? NoFigure : NoLength;
        return new(joint, input, [], least == 1 ? null : least, openEnded ? null : most, any ? null : none)
        {
            AnyLength = any && least == 1 && openEnded,
            _row = row,
        };
    }

    /// <summary>The least and the greatest figure that is right, whether any is, and whether there is no greatest.</summary>
    private static (long? Least, long? Most, bool Any, bool OpenEnded) Limits(Joint joint, int at, CandidateRow row)
    {
        JointInput input = joint.Inputs[at];
        long? least = null;
        long? most = null;
        bool any = false;
        bool openEnded = false;
        long longest = Longest(input);
        void Try()
        {
            joint.Visit(row, (values, outcome) =>
            {
                long value = values[at];
                if (outcome.Verdict == Verdict.Fits)
                {
                    any = true;
                    least = least is null || value < least ? value : least;
                    openEnded |= value > longest;
                    most = value <= longest && (most is null || value > most) ? value : most;
                }

                return true;
            });
        }

        Try();

        // A limit can also come from the part itself, such as two diameters of a post that is not chosen yet.
        foreach (JointInput mate in joint.Inputs.Where(i => i != input && i.Slot == input.Slot && i.Family == input.Family && !i.IsLength))
        {
            foreach (long code in mate.Domain)
            {
                row[at] = new Candidates(KnownState.Value, code, code, null);
                Try();
            }
        }

        return (least, most, any, openEnded);
    }

    /// <summary>The greatest code that a length, a load or an angle can have.</summary>
    private static long Longest(JointInput input) => input.IsMass ? Load.MostGrams : input.IsAngle ? FrameAngle.Largest : 100_000L * Nanometres.PerMillimetre;

    private ImmutableArray<string> Keys(Verdict verdict) => _open is not null ? [] : [.. _cells.Where(c => c.Verdict == verdict).Select(c => _input.Show(c.Code))];

    private ImmutableArray<long> CodesOf(Verdict verdict) => [.. _cells.Where(c => c.Verdict == verdict && Told?.Contains(c.Code) != false).Select(c => c.Code)];
}
