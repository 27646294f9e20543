using System.Text;

namespace Lugwork.Fuzz;

/// <summary>Something of the library that reads what strangers give it, with the laws that hold whatever that is.</summary>
internal abstract class FuzzTarget
{
    public abstract string Name { get; }

    /// <summary>No input is longer; what the library does with long texts, tests with a clock hold.</summary>
    public virtual int MostBytes => 2_000;

    /// <summary>Inputs that mean something: the files of the folder by its name, and what the library itself writes.</summary>
    public virtual IEnumerable<byte[]> Seeds => FuzzSeeds.Of(Name);

    /// <summary>Words that are put in.</summary>
    public virtual IEnumerable<byte[]> Words => [];

    /// <summary>Whatever escapes is a find.</summary>
    /// <exception cref="LawBrokenException">A law does not hold of this input.</exception>
    public abstract void Run(byte[] input);

    protected static byte[] Bytes(string text) => Encoding.UTF8.GetBytes(text);
}

/// <summary>A target that takes text.</summary>
internal abstract class TextTarget : FuzzTarget
{
    public sealed override void Run(byte[] input) => Run(TextOf(input));

    public abstract void Run(string text);

    /// <summary>UTF-8, with a sign for what is none; behind FF two bytes are a character, whatever they are, so that half characters come too.</summary>
    private static string TextOf(byte[] input) => input is [0xFF, ..] ? Halves(input) : Encoding.UTF8.GetString(input);

    private static string Halves(byte[] input) => string.Create((input.Length - 1) / 2, input, static (text, bytes) =>
    {
        for (int i = 0; i < text.Length; i++)
        {
            text[i] = (char)(bytes[1 + (2 * i)] | (bytes[2 + (2 * i)] << 8));
        }
    });

    /// <summary>The slot that the first line names, and the rest; no slot where it names none.</summary>
    protected static (Slot? Slot, string Below) WithSlot(string text)
    {
        int end = text.IndexOf('\n', StringComparison.Ordinal);
        return end > 0 && Slot.Find(text.AsSpan(0, end)) is { } slot ? (slot, text[(end + 1)..]) : (null, text);
    }

    /// <summary>A number from the text that is the same in each process.</summary>
    protected static int Draw(string text, int count)
    {
        uint sum = 2_166_136_261;
        foreach (char c in text)
        {
            sum = (sum ^ c) * 16_777_619;
        }

        return (int)(sum % (uint)count);
    }
}

/// <summary>A law that does not hold.</summary>
/// <param name="law">The law.</param>
/// <param name="told">What breaks it.</param>
internal sealed class LawBrokenException(string law, string told) : Exception($"{law}: {told}")
{
    public string Law => law;
}

/// <summary>What must hold.</summary>
internal static class Law
{
    public static void Holds(bool holds, string law, string told = "")
    {
        if (!holds)
        {
            throw new LawBrokenException(law, told);
        }
    }

    public static void Same(string one, string other, string law)
    {
        if (one != other)
        {
            throw new LawBrokenException(law, $"\n{one}\nand\n{other}");
        }
    }
}
