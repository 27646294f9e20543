// Says of each picture (PNG, eight bits a channel, not interlaced) whether something is drawn on it, from the top to the foot. Ends with 1 where one is empty or blank.
//
//   dotnet run BlankPictures.cs -- PICTURE...
using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;

const int Bands = 4;
int blank = 0;
foreach (string path in args)
{
    string? fault = Fault(path, out string size);
    Console.WriteLine($"{path}: {fault ?? size}");
    blank += fault is null ? 0 : 1;
}

return blank == 0 && args.Length > 0 ? 0 : 1;

// A band is drawn on where more than one in two hundred of its points is another colour than the commonest.
static string? Fault(string path, out string size)
{
    size = "";
    if (!File.Exists(path) || new FileInfo(path).Length == 0)
    {
        return "is empty or was not written";
    }

    if (Read(File.ReadAllBytes(path)) is not var (width, height, step, points))
    {
        return "is no picture that can be read";
    }

    size = $"{width} x {height}";
    for (int band = 0; band < Bands; band++)
    {
        Dictionary<int, int> counts = [];
        int from = height * band / Bands;
        int to = height * (band + 1) / Bands;
        for (int at = from * width * step; at < to * width * step; at += step)
        {
            int colour = (points[at] << 16) | (points[at + 1] << 8) | points[at + 2];
            counts[colour] = counts.GetValueOrDefault(colour) + 1;
        }

        int all = (to - from) * width;
        if (all - counts.Values.DefaultIfEmpty(0).Max() <= all / 200)
        {
            return $"has nothing drawn in part {band + 1} of {Bands}";
        }
    }

    return null;
}

static (int Width, int Height, int Step, byte[] Points)? Read(byte[] png)
{
    (int width, int height, int step) = (0, 0, 0);
    MemoryStream packed = new();
    for (int at = 8; at + 12 <= png.Length;)
    {
        int length = BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(at));
        string kind = Encoding.ASCII.GetString(png, at + 4, 4);
        if (length < 0 || at + 12 + length > png.Length)
        {
            return null;
        }

        if (kind == "IHDR")
        {
            (width, height) = (BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(at + 8)), BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(at + 12)));
            step = (png[at + 16], png[at + 17], png[at + 20]) switch { (8, 2, 0) => 3, (8, 6, 0) => 4, _ => 0 };
        }
        else if (kind == "IDAT")
        {
            packed.Write(png, at + 8, length);
        }

        at += 12 + length;
    }

    if (step == 0 || width <= 0 || height <= 0)
    {
        return null;
    }

    packed.Position = 0;
    using ZLibStream unpacked = new(packed, CompressionMode.Decompress);
    int row = width * step;
    byte[] points = new byte[row * height];
    for (int y = 0; y < height; y++)
    {
        int filter = unpacked.ReadByte();
        Span<byte> line = points.AsSpan(y * row, row);
        unpacked.ReadExactly(line);
        for (int x = 0; x < row; x++)
        {
            int left = x >= step ? line[x - step] : 0;
            int up = y > 0 ? points[((y - 1) * row) + x] : 0;
            int corner = x >= step && y > 0 ? points[((y - 1) * row) + x - step] : 0;
            line[x] += (byte)(filter switch { 1 => left, 2 => up, 3 => (left + up) / 2, 4 => Nearest(left, up, corner), _ => 0 });
        }
    }

    return (width, height, step, points);
}

static int Nearest(int left, int up, int corner)
{
    int guess = left + up - corner;
    (int a, int b, int c) = (Math.Abs(guess - left), Math.Abs(guess - up), Math.Abs(guess - corner));
    return a <= b && a <= c ? left : b <= c ? up : corner;
}
