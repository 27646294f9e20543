namespace Lugwork.Planning;

/// <summary>A slot is filled wherever fork and wheels are such that this kind of bicycle requires it.</summary>
internal sealed class ChoiceNeedRule(Slot slot, int[] scope, ChoiceNeedTable table, bool mayStayEmpty) : ChoiceRule(scope)
{
    /// <summary>Class of a slot that is empty.</summary>
    public const int IsEmpty = 0;

    /// <summary>Class of a slot with a part.</summary>
    public const int IsFilled = 1;

    public Slot Slot { get; } = slot;

    /// <summary>Where each of the four stands in the scope: the slot itself, fork, front wheel, rear wheel; -1 where it is not in the scope.</summary>
    public required int[] Places { get; init; }

    protected override (long Price, long Mass) Judge(ReadOnlySpan<int> classes)
    {
        int fork = Places[1] < 0 ? 0 : classes[Places[1]];
        int front = Places[2] < 0 ? 0 : classes[Places[2]];
        int rear = Places[3] < 0 ? 0 : classes[Places[3]];
        bool filled = Slot == Slot.Fork ? table.HasPart(0, fork) : Slot == Slot.FrontWheel ? table.HasPart(1, front) : Slot == Slot.RearWheel ? table.HasPart(2, rear) : classes[Places[0]] == IsFilled;
        return filled || mayStayEmpty || !table.Requires(Slot, fork, front, rear) ? default : (ChoiceEntry.Never, ChoiceEntry.Never);
    }
}

/// <summary>Which slots are required with which fork and wheels: asked once for each combination of their keys.</summary>
internal sealed class ChoiceNeedTable(Frame frame)
{
    private readonly List<Part?>[] _parts = [[], [], []];
    private readonly Dictionary<int, int>[] _classOf = [[], [], []];
    private readonly Dictionary<(int Fork, int Front, int Rear), ulong> _required = [];

    /// <summary>The class of a fork (0), front wheel (1) or rear wheel (2).</summary>
    public int Of(int place, Part? part)
    {
        int key = part switch { Fork fork => BicycleKind.KeyOf(fork), Wheel wheel => BicycleKind.KeyOf(wheel), _ => -1 };
        if (!_classOf[place].TryGetValue(key, out int found))
        {
            found = _parts[place].Count;
            _parts[place].Add(part);
            _classOf[place][key] = found;
        }

        return found;
    }

    public int Count(int place) => _parts[place].Count;

    public bool HasPart(int place, int number) => number < _parts[place].Count && _parts[place][number] is not null;

    public bool Requires(Slot slot, int fork, int front, int rear)
    {
        if (!_required.TryGetValue((fork, front, rear), out ulong required))
        {
            foreach (Slot one in BicycleKind.Required(frame, At(0, fork) as Fork, At(1, front) as Wheel, At(2, rear) as Wheel))
            {
                required |= 1UL << one.Number;
            }

            _required[(fork, front, rear)] = required;
        }

        return (required & (1UL << slot.Number)) != 0;
    }

    private Part? At(int place, int number) => number < _parts[place].Count ? _parts[place][number] : null;
}
