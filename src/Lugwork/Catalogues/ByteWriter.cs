using System.Buffers.Binary;
using System.Text;

namespace Lugwork.Catalogues;

/// <summary>Bytes that grow: whole numbers in groups of seven bits, least first, text with its length before it.</summary>
internal sealed class ByteWriter
{
    private byte[] _bytes = new byte[256];

    public int Length { get; private set; }

    public ReadOnlySpan<byte> Written => _bytes.AsSpan(0, Length);

    public void Clear() => Length = 0;

    public void Byte(byte value)
    {
        if (Length == _bytes.Length)
        {
            Array.Resize(ref _bytes, (int)Math.Min(Array.MaxLength, 2L * Length));
        }

        _bytes[Length++] = value;
    }

    public void Number(ulong value)
    {
        while (value >= 0x80)
        {
            Byte((byte)(value | 0x80));
            value >>= 7;
        }

        Byte((byte)value);
    }

    public void Text(string text)
    {
        byte[] utf8 = Encoding.UTF8.GetBytes(text);
        Number((ulong)utf8.Length);
        foreach (byte one in utf8)
        {
            Byte(one);
        }
    }

    /// <summary>What one field is: its state, and the codes that go with it.</summary>
    public void Candidates(in Candidates value)
    {
        Byte((byte)value.State);
        switch (value.State)
        {
            case KnownState.Value or KnownState.FrameSpecific or KnownState.NotCovered:
                Number((ulong)value.Low);
                break;
            case KnownState.Measured:
                Number((ulong)value.Low);
                Number((ulong)(value.High - value.Low));
                break;
            case KnownState.OneOf:
                Number((ulong)value.Codes!.Length);
                long before = 0;
                foreach (long code in value.Codes)
                {
                    Number((ulong)(code - before));
                    before = code;
                }

                break;
        }
    }

    /// <summary>Eight bytes over those that were written at a place.</summary>
    public void Put(int at, ulong value) => Fixed(_bytes.AsSpan(at, sizeof(ulong)), value);

    /// <summary>Eight bytes, least first.</summary>
    public static void Fixed(Span<byte> into, ulong value) => BinaryPrimitives.WriteUInt64LittleEndian(into, value);
}
