using System.Reflection;
using Lugwork.Catalogues;
using Lugwork.Tests.Architecture;

namespace Lugwork.Tests.Catalogues;

/// <summary>Every field of every part, in every state of knowledge, is kept, save what was read on a bicycle with other parts: in the catalogue, and through a snapshot.</summary>
public sealed class EveryFieldLaws
{
    public static TheoryData<string> Slots => [.. Slot.All.Select(s => s.Key)];

    [Theory]
    [MemberData(nameof(Slots))]
    public void A_field_is_kept_in_every_state(string key)
    {
        Slot slot = Slot.Find(key)!;
        Part empty = PartForms.Of(slot).Empty;
        PropertyInfo[] fields = Known(empty.GetType());
        Assert.NotEmpty(fields);
        List<Part> parts = [empty];
        foreach (PropertyInfo field in fields)
        {
            Part[] states = [.. States(field).Select(s => With(empty, field, s))];
            Assert.True(states.Distinct().Count() == states.Length, $"two states of {field.Name} are one part");
            Assert.True(states.Length >= 5, $"{field.Name} has {states.Length} states");
            parts.AddRange(states);
        }

        Kept(slot, parts);
    }

    /// <summary>All fields of a part at once, so that one that is kept in the place of another shows.</summary>
    [Theory]
    [MemberData(nameof(Slots))]
    public void Whole_parts_of_random_states_are_kept(string key)
    {
        Slot slot = Slot.Find(key)!;
        Random random = new(slot.Number);
        Part empty = PartForms.Of(slot).Empty;
        (PropertyInfo Field, object[] States)[] fields = [.. Known(empty.GetType()).Select(f => (f, States(f)))];
        List<Part> parts = [];
        for (int i = 0; i < 60; i++)
        {
            Part part = empty;
            foreach ((PropertyInfo field, object[] states) in fields)
            {
                part = random.Next(5) == 0 ? part : With(part, field, states[random.Next(states.Length)]);
            }

            parts.Add(part);
        }

        Kept(slot, parts);
    }

    private static void Kept(Slot slot, List<Part> parts)
    {
        PartCatalogue catalogue = new();
        CatalogueReport report = catalogue.Load(parts.Select((p, i) => new CatalogueRow(i, slot, p)));

        // What says two things at once is reported and not kept.
        HashSet<long> wrong = [.. Enumerable.Range(0, parts.Count).Where(i => PartForms.Of(slot).WrongOf(parts[i]) is not null).Select(i => (long)i)];
        Assert.Equal(wrong.Order(), report.Problems.Select(p => p.Id));
        Assert.Equal(parts.Where((_, i) => !wrong.Contains(i)).Select(p => TakenWith.Alone(p, slot)).Distinct().Count(), catalogue.View.KindsOf(slot));
        string path = Path.GetTempFileName();
        try
        {
            catalogue.Save(path);
            CatalogueView back = PartCatalogue.Open(path).View;
            for (int i = 0; i < parts.Count; i++)
            {
                Part? kept = wrong.Contains(i) ? null : TakenWith.Alone(parts[i], slot);
                Assert.Equal(kept, catalogue.View.Find(slot, i));
                Assert.Equal(kept, back.Find(slot, i));
            }
        }
        finally
        {
            File.Delete(path);
        }
    }

    /// <summary>Every field; a rider has no condition.</summary>
    private static PropertyInfo[] Known(Type part) =>
        [.. part.GetProperties().Where(p => (part != typeof(Rider) || p.Name != nameof(Part.Condition)) && p.SetMethod is not null && p.PropertyType.IsGenericType && p.PropertyType.GetGenericTypeDefinition() == typeof(Known<>))];

    private static Part With(Part part, PropertyInfo field, object state)
    {
        Part other = part with { };
        field.SetValue(other, state);
        return other;
    }

    private static object[] States(PropertyInfo field) =>
        (object[])typeof(EveryFieldLaws).GetMethod(nameof(StatesOf), BindingFlags.NonPublic | BindingFlags.Static)!.MakeGenericMethod(field.PropertyType.GetGenericArguments()[0]).Invoke(null, BindingFlags.DoNotWrapExceptions, null, null, null)!;

    private static object[] StatesOf<T>()
        where T : IInterfaceValue<T>
    {
        T[] values = [.. Values.Of<T>().Where(v => v.FitCode > 0)];
        List<object> states = [Known<T>.None, Known<T>.FrameSpecific, Known<T>.NotCovered, Known<T>.Of(values[0]), Known<T>.Of(values[^1]), Known<T>.OfFamily(OutsideFamily.All[0]), Known<T>.OfFamily(OutsideFamily.All[^1])];
        if (values.Length > 1)
        {
            states.Add(Known<T>.OneOf([values[0], values[^1]]));
            states.Add(Known<T>.OneOf([.. values.Take(Known<T>.MostValues)]));
        }

        if (T.IsPlainLength)
        {
            states.Add(Known<T>.Measured(75, 1));
            states.Add(Known<T>.Measured(0.000001m, 1_000));
        }

        return [.. states.Distinct()];
    }
}
