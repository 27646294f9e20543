using Lugwork.Hubs;
using Lugwork.Steering;
using Lugwork.Tyres;

namespace Lugwork.Benchmarks.Reading;

/// <summary>Axle by width.</summary>
public class AxleReading : SpecReading<AxleReading.Kind>
{
    /// <summary>The kind.</summary>
    public readonly struct Kind : ISpecKind
    {
        static SpecLines ISpecKind.Make() => SpecLines.Axles();

        static bool ISpecKind.Library(ReadOnlySpan<char> line) => AxleSize.TryParse(line, null, out _);

        static bool ISpecKind.Expression(string line) => RegexReaders.Axle(line, out _);

        static string? ISpecKind.Differs(string line, ReadOnlySpan<double> numbers)
        {
            AxleSize size = AxleSize.Parse(line, null);
            (decimal, decimal) library = (size.AxleMillimetres * 1_000_000, size.WidthMillimetres * 1_000_000);
            _ = RegexReaders.Axle(line, out (long Axle, long Width) expression);
            int slash = line.IndexOf('/', StringComparison.Ordinal);
            bool turned = slash > line.IndexOfAny(['x', 'X', '\u00D7', ' ']) && line.IndexOfAny(['x', 'X', '\u00D7']) < slash;
            double a = slash < 0 || turned ? numbers[0] : numbers[0] / numbers[1] * 25.4;
            double b = slash < 0 ? numbers[1] : turned ? numbers[1] / numbers[2] * 25.4 : numbers[2];
            (decimal, decimal) bare = (Nanometres(Math.Min(a, b)), Nanometres(Math.Max(a, b)));
            return library == expression && library == bare ? null : $"{library}, {expression}, {bare}";
        }
    }

    internal static decimal Nanometres(double millimetres) => Math.Round((decimal)millimetres * 1_000_000);
}

/// <summary>Headset codes of two halves.</summary>
public class HeadsetReading : SpecReading<HeadsetReading.Kind>
{
    /// <summary>The kind.</summary>
    public readonly struct Kind : ISpecKind
    {
        static SpecLines ISpecKind.Make() => SpecLines.Headsets();

        static bool ISpecKind.Library(ReadOnlySpan<char> line) => HeadsetPair.TryParse(line, null, out _);

        static bool ISpecKind.Expression(string line) => RegexReaders.Headset(line, out _);

        static string? ISpecKind.Differs(string line, ReadOnlySpan<double> numbers)
        {
            HeadsetPair pair = HeadsetPair.Parse(line, null);
            HeadsetHalf[] halves = [pair.Upper, pair.Lower];
            _ = RegexReaders.Headset(line, out (int Style, long Bore, long Second, int LowerStyle, long LowerBore, long LowerSecond) e);
            (long Style, decimal Bore, decimal Second)[] library = [.. halves.Select(h => (h.Style.FitCode, h.BoreMillimetres * 1_000_000, (h.SecondMillimetres ?? 0) * 1_000_000))];
            (long Style, decimal Bore, decimal Second)[] expression = [(e.Style, e.Bore, e.Second), (e.LowerStyle, e.LowerBore, e.LowerSecond)];
            decimal[] written = [.. library.SelectMany(h => h.Second == 0 ? [h.Bore] : new[] { h.Bore, h.Second })];
            decimal[] bare = [.. numbers.ToArray().Select(AxleReading.Nanometres)];
            return library.SequenceEqual(expression) && written.SequenceEqual(bare) ? null : $"{pair}, {string.Join(' ', expression)}, {string.Join(' ', bare)}";
        }
    }
}

/// <summary>ISO tyre sizes.</summary>
public class TyreReading : SpecReading<TyreReading.Kind>
{
    /// <summary>The kind.</summary>
    public readonly struct Kind : ISpecKind
    {
        static SpecLines ISpecKind.Make() => SpecLines.Tyres();

        static bool ISpecKind.Library(ReadOnlySpan<char> line) => TyreSize.TryParse(line, null, out _);

        static bool ISpecKind.Expression(string line) => RegexReaders.Tyre(line, out _);

        static string? ISpecKind.Differs(string line, ReadOnlySpan<double> numbers)
        {
            TyreSize size = TyreSize.Parse(line, null);
            (int, int) library = (size.WidthMillimetres, (int)size.Bead.FitCode);
            _ = RegexReaders.Tyre(line, out (int Width, int Bead) expression);
            (int a, int b) = ((int)numbers[0], (int)numbers[1]);
            (int, int) bare = a == 700 ? (b, 622) : a > b ? (b, a) : (a, b);
            return library == expression && library == bare ? null : $"{library}, {expression}, {bare}";
        }
    }
}
