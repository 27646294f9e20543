using System.Text.Json;
using Lugwork.Browser;

[assembly: AssemblyFixture(typeof(Shop))]

namespace Lugwork.Browser;

/// <summary>One shop for all tests, with the whole invented stock in a file of its own.</summary>
public sealed class Shop : IAsyncLifetime
{
    /// <summary>A frame as an address says it.</summary>
    public const string Frame = "kind gravel; rear R142-12; seatTube 27.2; shell BSA-68; headTubeUpper IS42; headTubeLower IS52; rearBrake FM-rear-140; largestRearTyre 50-622; seatTubeOutside 31.8; leastInsertion 80; mostInsertion 230; longestFork 400; mostForkTravel none; largestRearRotor 160";

    private readonly string _folder = Directory.CreateTempSubdirectory("lugwork-shop").FullName;
    private ShopProcess? _process;

    public ShopProcess Process => _process!;

    public HttpClient Client => Process.Client;

    public string File => Path.Combine(_folder, "shop.db");

    public static string Frames => Uri.EscapeDataString(Frame);

    public async ValueTask InitializeAsync() =>
        _process = await ShopProcess.Start($"Data Source={File}", ("Shop__RequestsPerMinute", "1000000"));

    public async ValueTask DisposeAsync()
    {
        if (_process is not null)
        {
            await _process.DisposeAsync();
        }

        Directory.Delete(_folder, recursive: true);
    }

    /// <summary>A second file with the same stock; nothing writes to the first while it is copied.</summary>
    public string Copy(string name)
    {
        string copy = Path.Combine(_folder, name);
        System.IO.File.Copy(File, copy);
        if (System.IO.File.Exists(File + "-wal"))
        {
            System.IO.File.Copy(File + "-wal", copy + "-wal");
        }

        return copy;
    }

    public async Task<JsonElement> Json(string address) => await Json(Client, address);

    public static async Task<JsonElement> Json(HttpClient client, string address)
    {
        using HttpResponseMessage answer = await client.GetAsync(address);
        string text = await answer.Content.ReadAsStringAsync();
        Assert.True(answer.IsSuccessStatusCode, $"{(int)answer.StatusCode} {text}");
        return JsonDocument.Parse(text).RootElement;
    }
}
