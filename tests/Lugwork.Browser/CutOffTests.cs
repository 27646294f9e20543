using System.Diagnostics;
using System.Globalization;
using System.Net.Sockets;
using System.Text;
using System.Text.Json;

namespace Lugwork.Browser;

/// <summary>An answer whose time is over while it is being sent.</summary>
public sealed class CutOffTests(Shop shop)
{
    private const int Asked = 16;

    /// <summary>Nobody reads for longer than an answer may take, so that those which do not fit in between are cut off. What of them comes must not end like a whole answer.</summary>
    [Fact]
    public async Task What_is_cut_off_breaks_the_connection_and_what_ends_is_whole()
    {
        await using ShopProcess hasty = await ShopProcess.Start($"Data Source={shop.File}", ("Shop__AnswerWithin", "00:00:08"), ("Shop__RequestsPerMinute", "1000000"));
        string path = $"/api/parts/rearTyre?frame={Shop.Frames}&list=Fits&size=10000";
        await Warm(hasty.Client, path);
        (byte[] slow, bool isBroken) = await Ask(hasty.Address, path, mayWait: TimeSpan.FromSeconds(60));

        // What had come before the break may be lost with it.
        List<string> ended = Ended(slow, out bool isCut);
        Assert.True(ended.Count < Asked, "all answers were sent in time: nothing was cut off");
        Assert.True(isCut || isBroken, $"{ended.Count} of {Asked} answers, and the connection was closed as if nothing were missing");
        foreach (string one in ended)
        {
            using JsonDocument whole = JsonDocument.Parse(one);
            Assert.True(!whole.RootElement.TryGetProperty("rows", out JsonElement rows) || rows.GetArrayLength() == 10_000, "an answer ends before its last row");
        }

        // Who reads has all of them, whole.
        (byte[] quick, _) = await Ask(hasty.Address, path, mayWait: TimeSpan.Zero);
        Assert.Equal(Asked, Ended(quick, out isCut).Count);
        Assert.False(isCut);
    }

    /// <summary>A cold shop may be too slow for its own time: then it says that it is busy, or breaks off what it began.</summary>
    private static async Task Warm(HttpClient client, string path)
    {
        for (int turn = 0; turn < 30; turn++)
        {
            try
            {
                using HttpResponseMessage warm = await client.GetAsync(path);
                if (warm.IsSuccessStatusCode)
                {
                    return;
                }
            }
            catch (HttpRequestException)
            {
            }
        }

        Assert.Fail("it never answers in time");
    }

    /// <summary>All that comes on one connection, of several requests for the same, when it is first read after it was broken off or after a while; and whether it was broken off.</summary>
    private static async Task<(byte[] Bytes, bool IsBroken)> Ask(Uri address, string path, TimeSpan mayWait)
    {
        using TcpClient client = new() { ReceiveBufferSize = 4_096 };
        await client.ConnectAsync(address.Host, address.Port);
        NetworkStream stream = client.GetStream();
        string one = $"GET {path} HTTP/1.1\r\nHost: {address.Authority}\r\n";
        await stream.WriteAsync(Encoding.ASCII.GetBytes(string.Concat(Enumerable.Repeat(one + "\r\n", Asked - 1)) + one + "Connection: close\r\n\r\n"));
        for (Stopwatch watch = Stopwatch.StartNew(); watch.Elapsed < mayWait && !client.Client.Poll(0, SelectMode.SelectError);)
        {
            await Task.Delay(100);
        }

        using MemoryStream all = new();
        try
        {
            await stream.CopyToAsync(all).WaitAsync(TimeSpan.FromSeconds(90));
        }
        catch (IOException)
        {
            return (all.ToArray(), true);
        }

        return (all.ToArray(), false);
    }

    /// <summary>The bodies of the answers that came to their end, by their own head; whether one came after them that did not.</summary>
    private static List<string> Ended(byte[] bytes, out bool isCut)
    {
        List<string> ended = [];
        ReadOnlySpan<byte> left = bytes;
        while (left.Length > 0)
        {
            int head = left.IndexOf("\r\n\r\n"u8);
            if (head < 0 || !TryBody(Encoding.ASCII.GetString(left[..head]), left[(head + 4)..], out string body, out int length))
            {
                isCut = true;
                return ended;
            }

            ended.Add(body);
            left = left[(head + 4 + length)..];
        }

        isCut = false;
        return ended;
    }

    private static bool TryBody(string head, ReadOnlySpan<byte> bytes, out string body, out int length)
    {
        const string Length = "Content-Length: ";
        body = "";
        if (head.IndexOf(Length, StringComparison.OrdinalIgnoreCase) is >= 0 and int at)
        {
            string figure = head[(at + Length.Length)..];
            length = int.Parse(figure.Split('\r')[0], CultureInfo.InvariantCulture);
            body = bytes.Length < length ? "" : Encoding.UTF8.GetString(bytes[..length]);
            return bytes.Length >= length;
        }

        StringBuilder text = new();
        length = 0;
        while (bytes[length..].IndexOf("\r\n"u8) is >= 0 and int line)
        {
            int size = int.Parse(Encoding.ASCII.GetString(bytes.Slice(length, line)), NumberStyles.HexNumber, CultureInfo.InvariantCulture);
            length += line + 2;
            if (length + size + 2 > bytes.Length)
            {
                return false;
            }

            text.Append(Encoding.ASCII.GetString(bytes.Slice(length, size)));
            length += size + 2;
            if (size == 0)
            {
                body = text.ToString();
                return true;
            }
        }

        return false;
    }
}
