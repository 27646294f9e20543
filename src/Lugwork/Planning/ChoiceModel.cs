using System.Collections.Immutable;

namespace Lugwork.Planning;

/// <summary>The request read once: entries by slot, gathered into groups that no rule can tell apart, and the rules over them.</summary>
internal sealed class ChoiceModel
{
    private readonly int[] _numbers = new int[Slot.All.Length];

    private ChoiceModel(Slot[] slots)
    {
        Slots = slots;
        Entries = new List<ChoiceEntry>[slots.Length];
        Groups = new List<ChoiceGroup>[slots.Length];
        Array.Fill(_numbers, -1);
        for (int i = 0; i < slots.Length; i++)
        {
            _numbers[slots[i].Number] = i;
            Entries[i] = [];
            Groups[i] = [];
        }
    }

    public Slot[] Slots { get; }

    /// <summary>Entries by slot, in the order that decides between equals.</summary>
    public List<ChoiceEntry>[] Entries { get; }

    public List<ChoiceGroup>[] Groups { get; }

    public List<ChoiceRule> Rules { get; } = [];

    /// <summary>For each wish the slot and, by group, whether it is met.</summary>
    public List<(ChoiceWish Wish, int Slot, bool[] Met)> Wishes { get; } = [];

    /// <summary>Number of a slot in the model; -1 where it is always empty.</summary>
    public int NumberOf(Slot slot) => _numbers[slot.Number];

    public static ChoiceModel Of(Build build, IReadOnlyList<ChoiceEntry>[] entries, ImmutableArray<ChoiceWish> wishes, ChoicePrices prices, Build? asItWas, CancellationToken cancellationToken)
    {
        ChoiceModel model = new([.. Slot.All.Where(s => entries[s.Number].Count > 0)]);
        foreach (Slot slot in model.Slots)
        {
            model.Entries[model.NumberOf(slot)].AddRange(entries[slot.Number]);
        }

        model.Read(build, wishes, prices, asItWas, cancellationToken);
        return model;
    }

    private void Read(Build build, ImmutableArray<ChoiceWish> wishes, ChoicePrices prices, Build? asItWas, CancellationToken cancellationToken)
    {
        foreach (Joint joint in JointTable.All)
        {
            int[] own = [.. joint.Slots.Select(NumberOf)];
            if (Array.TrueForAll(own, n => n >= 0 && Entries[n].Exists(e => !e.IsEmpty)))
            {
                int[] beside = [.. joint.GivesWay.Select(g => NumberOf(g.Slot)).Where(n => n >= 0)];
                Rules.Add(new ChoiceJointRule(joint, [.. own.Concat(beside).Order()], Slots, prices));
            }
        }

        int joints = Rules.Count;
        ChoiceEntryRule[] articles = [.. ChoiceEntryRule.Of(Slots, Entries, build, asItWas ?? build)];
        ChoiceNeedTable needs = new(build.Frame);
        AddNeeds(needs, asItWas);
        Rules.AddRange(articles);
        ChoiceWish[][] wishesOf = [.. Slots.Select(s => wishes.Where(w => w.Slot == s).ToArray())];
        for (int slot = 0; slot < Slots.Length; slot++)
        {
            cancellationToken.ThrowIfCancellationRequested();
            ReadSlot(slot, joints, needs, wishesOf[slot], build, asItWas, cancellationToken);
        }

        foreach (ChoiceRule rule in Rules)
        {
            for (int place = 0; place < rule.Scope.Length; place++)
            {
                rule.Classes[place] = rule.ClassOf[place].Max() + 1;
            }
        }
    }

    /// <summary>A rule for every slot that may be empty and that some bicycle of this frame requires.</summary>
    private void AddNeeds(ChoiceNeedTable needs, Build? asItWas)
    {
        int[] deciding = [NumberOf(Slot.Fork), NumberOf(Slot.FrontWheel), NumberOf(Slot.RearWheel)];
        for (int slot = 0; slot < Slots.Length; slot++)
        {
            if (Slots[slot].IsOptional || !Entries[slot].Exists(e => e.IsEmpty))
            {
                continue;
            }

            int[] scope = [.. deciding.Append(slot).Where(n => n >= 0).Distinct().Order()];
            bool mayStayEmpty = asItWas is not null && asItWas[Slots[slot]] is null && asItWas.Check().Missing.Contains(Slots[slot]);
            Rules.Add(new ChoiceNeedRule(Slots[slot], scope, needs, mayStayEmpty) { Places = [Array.IndexOf(scope, slot), .. deciding.Select(n => n < 0 ? -1 : Array.IndexOf(scope, n))] });
        }
    }

    private void ReadSlot(int slot, int joints, ChoiceNeedTable needs, ChoiceWish[] wishes, Build build, Build? asItWas, CancellationToken cancellationToken)
    {
        List<(ChoiceJointRule Rule, int Place)> touching = [];
        for (int i = 0; i < joints; i++)
        {
            int place = Array.IndexOf(Rules[i].Scope, slot);
            if (place >= 0)
            {
                touching.Add(((ChoiceJointRule)Rules[i], place));
            }
        }

        Slot own = Slots[slot];
        (ChoiceEntryRule Rule, int Place)[] articles = [.. Rules.OfType<ChoiceEntryRule>().Where(r => r.Scope.Contains(slot)).Select(r => (r, Array.IndexOf(r.Scope, slot)))];
        int decides = own == Slot.Fork ? 0 : own == Slot.FrontWheel ? 1 : own == Slot.RearWheel ? 2 : -1;
        ChoiceInterner seen = new();
        int before = touching.Count + wishes.Length;
        long[] key = new long[before + articles.Length + 2];
        for (int entry = 0; entry < Entries[slot].Count; entry++)
        {
            if (entry % 1_000 == 0)
            {
                cancellationToken.ThrowIfCancellationRequested();
            }

            Part? part = Entries[slot][entry].Part;
            Part? offered = Entries[slot][entry].Offer?.Part;
            bool same = asItWas is not null && part is not null && ReferenceEquals(part, asItWas[own]);
            for (int i = 0; i < touching.Count; i++)
            {
                key[i] = touching[i].Rule.Of(touching[i].Place, part, same);
            }

            for (int i = 0; i < wishes.Length; i++)
            {
                key[touching.Count + i] = offered is not null && (wishes[i].Keeps ? ReferenceEquals(offered, build[own]) : wishes[i].IsMetBy(offered)) ? 1 : 0;
            }

            for (int i = 0; i < articles.Length; i++)
            {
                key[before + i] = articles[i].Rule.Of(articles[i].Place, Entries[slot][entry].Offer);
            }

            key[^2] = part is null ? ChoiceNeedRule.IsEmpty : ChoiceNeedRule.IsFilled;
            key[^1] = decides < 0 ? 0 : needs.Of(decides, part);
            int number = seen.NumberOf(key);
            if (number == Groups[slot].Count)
            {
                Groups[slot].Add(new(Entries[slot][entry]));
            }

            Groups[slot][number].Entries.Add(entry);
        }

        for (int i = 0; i < touching.Count; i++)
        {
            touching[i].Rule.ClassOf[touching[i].Place] = Column(seen, i);
        }

        for (int i = 0; i < wishes.Length; i++)
        {
            Wishes.Add((wishes[i], slot, Array.ConvertAll(Column(seen, touching.Count + i), c => c == 1)));
        }

        for (int i = 0; i < articles.Length; i++)
        {
            articles[i].Rule.ClassOf[articles[i].Place] = Column(seen, before + i);
        }

        foreach (ChoiceNeedRule rule in Rules.OfType<ChoiceNeedRule>())
        {
            int place = Array.IndexOf(rule.Scope, slot);
            if (place >= 0)
            {
                rule.ClassOf[place] = Column(seen, decides < 0 ? key.Length - 2 : key.Length - 1);
            }
        }
    }

    /// <summary>The same, of which the least cost is how many joints of a slot, and how many needs that come with its part, are not met beside a rest that is met. Entries have to cost nothing but that.</summary>
    public void Count(int slot)
    {
        for (int i = 0; i < Rules.Count; i++)
        {
            Rules[i] = new ChoiceCountRule(Rules[i], Rules[i] is not ChoiceEntryRule && Rules[i].Scope.Contains(slot));
        }
    }

    private static int[] Column(ChoiceInterner seen, int column)
    {
        int[] classes = new int[seen.Count];
        for (int i = 0; i < classes.Length; i++)
        {
            classes[i] = (int)seen[i][column];
        }

        return classes;
    }
}
