using FsCheck;
using FsCheck.Xunit;
using Lugwork.Planning;
using Lugwork.Tests.Builds;

namespace Lugwork.Tests.Planning;

/// <summary>What holds for every donor and frame.</summary>
public sealed class CarryLaws
{
    /// <summary>A frame with some parts of its own.</summary>
    private static Build Onto(Random random)
    {
        Build all = Bicycles.Any(random);
        return Slot.All.Where(s => s != Slot.Frame && all[s] is not null && random.Next(3) != 0).Aggregate(all, (b, s) => b.Without(s));
    }

    /// <summary>A bicycle from which some parts are gone.</summary>
    private static Build Donor(Random random)
    {
        Build all = Bicycles.Any(random);
        return Slot.All.Where(s => s != Slot.Frame && all[s] is not null && random.Next(2) != 0).Aggregate(all, (b, s) => b.Without(s));
    }

    /// <summary>By the check: a part with the new build, and with what it is one article with.</summary>
    private static Verdict Alone(CarryOver over, CarriedPart part)
    {
        Build with = over.Onto.With(part.Part, part.Slot);
        Slot? along = part.Slot == Slot.Seatpost ? Slot.Dropper : new[] { Slot.FrontBrakeLever, Slot.RearBrakeLever, Slot.RearShifter, Slot.FrontShifter }.Contains(part.Slot) ? Slot.Controls : null;
        return along is null || over.Donor[along] is not { } other || over.Onto[along] is not null ? WorstOf(with, part.Slot)
            : (Verdict)Math.Max((int)WorstOf(with.With(other, along), part.Slot), (int)WorstOf(with.With(other, along), along));
    }

    private static Verdict WorstOf(Build build, Slot slot) =>
        build.Check().Findings.Where(f => f.Joint!.Slots.Contains(slot)).Select(f => f.Verdict).DefaultIfEmpty(Verdict.NotJudged).Max();

    [Property(MaxTest = 20)]
    public void Nothing_is_called_fitting_that_the_check_refuses(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        CarryOver over = CarryOver.Of(Donor(random), Onto(random));
        foreach (CarriedPart part in over.Parts)
        {
            Verdict checkedAlone = Alone(over, part);
            Assert.True(part.Verdict == Verdict.NotJudged ? checkedAlone <= Verdict.Fits : part.Verdict >= checkedAlone || checkedAlone == Verdict.Fits, $"{part}: the check says {checkedAlone}");
            Assert.Equal(checkedAlone > Verdict.NeedsMeasuring, part.WithFrame > Verdict.NeedsMeasuring);
        }

        // All that move, together: the check of the whole finds no more than the parts say, and refuses none of them.
        CarriedPart[] moving = [.. over.Parts.Where(p => p.Plan == CarryDecision.Moves)];
        HashSet<Slot> slots = [.. moving.Select(p => p.Slot)];
        System.Collections.Immutable.ImmutableArray<Fit> all = over.Moved.Check().Findings;
        Assert.All(slots, s => Assert.Equal(all.Where(f => f.Joint!.Slots.Contains(s)).Select(f => (f.Joint, f.Verdict)), over.Moved.FitsOf(s).Select(f => (f.Joint, f.Verdict))));
        Verdict whole = all.Where(f => f.Joint!.Slots.Any(slots.Contains)).Select(f => f.Verdict).DefaultIfEmpty(Verdict.NotJudged).Max();
        Assert.True(whole <= Verdict.NeedsMeasuring);
        Assert.True(whole <= Verdict.Fits || whole <= moving.Max(p => p.Verdict));
    }

    [Property(MaxTest = 20)]
    public void Every_part_is_moved_or_left_and_never_both(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        Build donor = Donor(random);
        CarryOver over = CarryOver.Of(donor, Onto(random));
        Assert.Equal(Slot.All.Where(s => s != Slot.Frame && s != Slot.Rider && donor[s] is not null), over.Parts.Select(p => p.From));

        CarryOver again = CarryOver.Of(donor, over.Onto);
        Assert.Equal(over.Parts.Select(p => p.ToString()), again.Parts.Select(p => p.ToString()));
        Assert.All(over.WorthMoving, p => Assert.True(p.Verdict is Verdict.Fits or Verdict.NeedsPart && ReferenceEquals(over.Moved[p.Slot], p.Part), p.ToString()));

        // One article is not taken apart.
        if (donor[Slot.Seatpost] is not null && donor[Slot.Dropper] is not null)
        {
            Assert.True(over.Onto[Slot.Dropper] is not null || over.DonorLeft[Slot.Seatpost] is null == over.DonorLeft[Slot.Dropper] is null, $"seed {seed.Item}");
        }

        Slot[] levers = [.. new[] { Slot.FrontBrakeLever, Slot.RearBrakeLever, Slot.RearShifter, Slot.FrontShifter }.Where(s => donor[s] is not null)];
        if (donor[Slot.Controls] is not null && levers.Length > 0 && over.Onto[Slot.Controls] is null)
        {
            Assert.True(levers.Any(s => over.DonorLeft[s] is null) == over.DonorLeft[Slot.Controls] is null, $"seed {seed.Item}");
        }

        foreach (CarriedPart part in over.Parts)
        {
            bool moves = part.Plan == CarryDecision.Moves;
            Assert.Equal(moves, over.DonorLeft[part.From] is null);
            Assert.Equal(moves, ReferenceEquals(over.Moved[part.Slot], part.Part));
            Assert.False(moves && over.Onto[part.Slot] is not null);
        }
    }

    /// <summary>Needs take long to say: of one donor.</summary>
    [Fact]
    public void What_is_to_buy_is_what_the_checks_miss_and_the_text_repeats()
    {
        Random random = new(30);
        Build donor = Donor(random);
        CarryOver over = CarryOver.Of(donor, Onto(random));
        Assert.Equal(over.Moved.Check().Missing, over.ToBuy.Select(n => n.Slot));
        Assert.Equal(over.DonorLeft.Check().Missing, over.DonorLacks.Select(n => n.Slot));
        Assert.Equal(over.ToString(), CarryOver.Of(donor, over.Onto).ToString());
        Assert.True(over.Parts.Length > 10 && over.ToBuy.Length > 0 && over.DonorLacks.Length > 0);
    }

    /// <summary>It may be asked about again: a part of which two figures contradict each other knows no more than either half.</summary>
    [Property(MaxTest = 20)]
    public void Knowing_more_of_the_frame_never_turns_refused_into_a_fit(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        Build donor = Donor(random);
        Build onto = Onto(random);
        CarryOver known = CarryOver.Of(donor, onto);
        CarryOver before = CarryOver.Of(donor, With(onto, Forget(onto.Frame, Slot.Frame, random)));
        foreach ((CarriedPart less, CarriedPart more) in before.Parts.Zip(known.Parts))
        {
            foreach ((CarryPlace was, CarryPlace now) in less.Places.Zip(more.Places))
            {
                Assert.True(was.Verdict <= Verdict.NeedsMeasuring || now.Verdict >= Verdict.NeedsMeasuring, $"{less.From}: {was} before, {now} now; {was.Why}");
            }
        }
    }

    /// <inheritdoc cref="Knowing_more_of_the_frame_never_turns_refused_into_a_fit"/>
    [Property(MaxTest = 20)]
    public void Knowing_more_of_a_part_never_turns_refused_into_a_fit(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        Build onto = Onto(random);
        Build all = Donor(random);
        Slot[] filled = [.. Slot.All.Where(s => s != Slot.Frame && s != Slot.Rider && all[s] is not null)];
        if (filled.Length == 0)
        {
            return;
        }

        Slot slot = filled[random.Next(filled.Length)];
        Build donor = all.With(Forget(all[slot]!, slot, random), slot);
        CarriedPart less = CarryOver.Of(donor, onto).Parts.Single(p => p.From == slot);
        CarriedPart more = CarryOver.Of(all, onto).Parts.Single(p => p.From == slot);
        Assert.True(less.WithFrame <= Verdict.NeedsMeasuring || less.Slot != more.Slot || more.WithFrame >= Verdict.NeedsMeasuring, $"{less} before, {more} now");
    }

    private static Build With(Build build, Part frame) =>
        Slot.All.Where(s => s != Slot.Frame && build[s] is not null).Aggregate(Build.From((Frame)frame), (b, s) => b.With(build[s]!, s));

    /// <summary>The same part, of which some fields are not known yet.</summary>
    private static Part Forget(Part part, Slot slot, Random random)
    {
        List<SpecProblem> problems = [];
        Part less = PartForms.Of(slot).ReadProperties([.. PartForms.Of(slot).Write(part).Where(_ => random.Next(3) != 0)], "$", problems);
        return problems.Count == 0 ? less : part;
    }
}
