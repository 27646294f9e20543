using System.Collections.Immutable;

namespace Lugwork.Drawing;

/// <summary>A length as it is drawn: the figure where one is known, else a size that says nothing, with the words for both.</summary>
/// <param name="Name">What is measured.</param>
/// <param name="Figure">Millimetres; null where it is not known or not decided.</param>
/// <param name="Drawn">Millimetres at which it is drawn.</param>
/// <param name="Said">The figure in words; "?" where nothing is known.</param>
/// <param name="Ask">How it is measured or whom to ask; empty where it is known.</param>
internal sealed record DraftSize(string Name, double? Figure, double Drawn, string Said, string Ask = "")
{
    /// <summary>The part has none.</summary>
    public bool IsNone { get; private init; }

    public bool IsKnown => Figure is not null;

    /// <summary>A figure that is known, or worked out of known ones; the remark says which.</summary>
    public static DraftSize Known(string name, double millimetres, string remark = "") => new(name, millimetres, millimetres, $"{DraftText.Number(millimetres)} mm{remark}");

    /// <summary>A figure that is not known, with what is known of it instead.</summary>
    public static DraftSize Open(string name, double drawn, string said, string ask) => new(name, null, drawn, said, ask);

    /// <summary>A plain length of a part.</summary>
    public static DraftSize Of(Known<Dimension> known, string name, JointInput input, double placeholder)
    {
        if (known.State != KnownState.Measured)
        {
            return Of(known, static d => (double)d.Millimetres, name, input, placeholder);
        }

        Candidates read = known.ToCandidates();
        double middle = (read.Low + read.High) / 2.0 / Nanometres.PerMillimetre;
        double error = (read.High - read.Low) / 2.0 / Nanometres.PerMillimetre;
        return new(name, middle, middle, $"{DraftText.Number(middle)} \u00B1 {DraftText.Number(error)} mm (measured)");
    }

    /// <summary>A length that follows from a value of a part; zero where the value has none that is known.</summary>
    public static DraftSize Of<T>(Known<T> known, Func<T, double> millimetres, string name, JointInput input, double placeholder)
        where T : IInterfaceValue<T>
    {
        if (known.State == KnownState.None)
        {
            return new(name, null, placeholder, "none") { IsNone = true };
        }

        ImmutableArray<T> values = known.Values;
        List<double> figures = [];
        foreach (T value in values)
        {
            double figure = millimetres(value);
            if (!figures.Contains(figure))
            {
                figures.Add(figure);
            }
        }

        if (figures is [> 0 and var only])
        {
            string remark = known.Evidence?.Kind switch { EvidenceKind.Measured => " (measured)", EvidenceKind.Assumed => " (assumed)", _ => "" };
            return Known(name, only, remark);
        }

        string said = values.IsEmpty ? (known.State == KnownState.Unknown ? "?" : known.InTradeWords())
            : figures.Count > 1 && !figures.Contains(0) && figures.Count < 4 ? $"{string.Join(" or ", figures.ConvertAll(f => DraftText.Number(f)))} mm"
            : known.InTradeWords();
        return Open(name, figures.Find(f => f > 0) is > 0 and var first ? first : placeholder, said, input.Measure);
    }

    /// <summary>"seat tube bore 27.2 mm", "? insertion", "? bore: 27 or 27.2 mm".</summary>
    public override string ToString() => Figure is not null ? $"{Name} {Said}" : IsNone ? $"{Name}: none" : Said == "?" ? $"? {Name}" : $"? {Name}: {Said}";
}
