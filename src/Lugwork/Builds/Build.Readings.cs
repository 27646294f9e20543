using System.Collections.Immutable;

namespace Lugwork;

/// <content>Readings that hold for the parts they were taken with.</content>
public sealed partial class Build
{
    /// <summary>Readings that hold no more, because a part that they were taken with is another one: room before the toes, height of the pedal, lines of rings and sprockets, gap of the binder. The part does not say them any more; measured anew they leave this list.</summary>
    public ImmutableArray<AsBuiltValue> OldReadings => _notes.Old;

    /// <summary>Marks of the readings that hold, for a file.</summary>
    internal string? MarkOf(AsBuiltValue value) => _notes.TakenOf(value.Slot, value.Field)?.Parts;

    /// <summary>The same as it is once another part comes into a slot: the readings that were taken with the one before are unknown.</summary>
    internal Build ReadingsAside(Slot slot)
    {
        Build build = this;
        foreach (TakenReading taken in _notes.Taken)
        {
            build = TakenWith.SlotsOf(taken.Slot, taken.Field).Contains(slot) ? build.Forgetting(taken) : build;
        }

        return build;
    }

    /// <summary>The same without any reading that was taken with several parts, stated ones too: what a part is by itself.</summary>
    internal Build WithoutReadings()
    {
        Build build = this;
        foreach ((Slot slot, string field) in TakenWith.StatedIn(this))
        {
            build = build.Placed(TakenWith.Unset(build[slot]!, slot, field), slot, build._notes.Without(slot, field));
        }

        return build;
    }

    /// <summary>The same where what the parts state of such readings was read on this very bicycle: its file says so.</summary>
    internal Build WithStatedReadings()
    {
        BuildNotes notes = _notes;
        foreach ((Slot slot, string field) in TakenWith.StatedIn(this))
        {
            notes = notes.TakenOf(slot, field) is null ? notes.With(Taken(slot, field)) : notes;
        }

        return ReferenceEquals(notes, _notes) ? this : Noting(notes);
    }

    /// <summary>The same with what was built of a part that came from another bicycle with it.</summary>
    internal Build Bringing(IEnumerable<AsBuiltValue> values) =>
        values.Where(v => this[v.Slot] is { } part && AsBuiltRules.IsOf(part, v)).Aggregate(this, (b, v) => b.Noting(b._notes.With(v)));

    /// <summary>The same with a reading that is known to be old.</summary>
    internal Build WithOld(AsBuiltValue value) => Noting(_notes.WithOld(value));

    /// <summary>The same with a part as it was stated before it was measured: the article is the same one, so that nothing read with it goes.</summary>
    internal Build AsStated(Part part, Slot slot) => Placed(part, slot, _notes);

    /// <summary>Readings that were taken with another part than is now in a slot are unknown again.</summary>
    private Build Held(Slot changed)
    {
        Build build = this;
        foreach (TakenReading taken in _notes.Taken)
        {
            if (TakenWith.SlotsOf(taken.Slot, taken.Field).Contains(changed) && TakenWith.MarkOf(taken.Slot, taken.Field, this) != taken.Parts)
            {
                build = build.Forgetting(taken);
            }
        }

        return build;
    }

    /// <summary>The parts are the same ones, and more is known of one of them: what was read with it still holds.</summary>
    private Build KnownCloser(Slot changed)
    {
        BuildNotes notes = _notes;
        foreach (TakenReading taken in _notes.Taken)
        {
            notes = TakenWith.SlotsOf(taken.Slot, taken.Field).Contains(changed) ? notes.With(taken with { Parts = TakenWith.MarkOf(taken.Slot, taken.Field, this) }) : notes;
        }

        return ReferenceEquals(notes, _notes) ? this : Noting(notes);
    }

    private Build Forgetting(TakenReading taken) =>
        Placed(TakenWith.Unset(this[taken.Slot]!, taken.Slot, taken.Field), taken.Slot, _notes.Lapse(taken));

    private TakenReading Taken(Slot slot, string field) =>
        new(slot, field, PartForms.Of(slot).TextOf(this[slot]!, field)!, TakenWith.MarkOf(slot, field, this));
}
