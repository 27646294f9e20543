using System.Diagnostics;
using System.Text;
using System.Text.RegularExpressions;

namespace Lugwork.Browser;

/// <summary>The shop as a process of its own, on a free port of the loopback.</summary>
public sealed partial class ShopProcess : IAsyncDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(90);
    private readonly Process _process;
    private int _ended;
    private readonly StringBuilder _said = new();
    private readonly TaskCompletionSource<Uri> _listening = new(TaskCreationOptions.RunContinuationsAsynchronously);

    private ShopProcess(string connection, (string Key, string Value)[] settings)
    {
        string program = Path.Combine(AppContext.BaseDirectory, "..", "..", "ShopWeb", Path.GetFileName(AppContext.BaseDirectory.TrimEnd(Path.DirectorySeparatorChar)), "ShopWeb.dll");
        Assert.True(File.Exists(program), $"{program} is not built");
        ProcessStartInfo start = new(Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet", [program, "--urls", "http://127.0.0.1:0"])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            // Its settings lie beside the program, not where it is started.
            WorkingDirectory = Path.GetTempPath(),
        };
        start.Environment["ConnectionStrings__Shop"] = connection;
        start.Environment["Logging__LogLevel__Microsoft.Hosting.Lifetime"] = "Information";
        start.Environment["Logging__Console__FormatterName"] = "simple";

        // It lives for seconds: what it would learn for later is not worth its time.
        start.Environment["DOTNET_TieredPGO"] = "0";
        foreach ((string key, string value) in settings)
        {
            start.Environment[key] = value;
        }

        _process = new() { StartInfo = start };
        _process.OutputDataReceived += (_, e) => Heard(e.Data);
        _process.ErrorDataReceived += (_, e) => Heard(e.Data);
        _process.Start();
        _process.BeginOutputReadLine();
        _process.BeginErrorReadLine();
    }

    /// <summary>Where it listens.</summary>
    public Uri Address { get; private set; } = null!;

    /// <summary>A client for it; redirects are not followed.</summary>
    public HttpClient Client { get; private set; } = null!;

    /// <summary>All that it wrote so far.</summary>
    public string Said
    {
        get
        {
            lock (_said)
            {
                return _said.ToString();
            }
        }
    }

    public static async Task<ShopProcess> Start(string connection, params (string Key, string Value)[] settings)
    {
        ShopProcess shop = new(connection, settings);
        try
        {
            shop.Address = await shop._listening.Task.WaitAsync(Patience);
        }
        catch (TimeoutException)
        {
            string said = shop.Said;
            await shop.DisposeAsync();
            throw new InvalidOperationException("the shop did not start:\n" + said);
        }

        shop.Client = new(new SocketsHttpHandler { AllowAutoRedirect = false }) { BaseAddress = shop.Address, Timeout = TimeSpan.FromSeconds(60) };
        return shop;
    }

    public async ValueTask DisposeAsync()
    {
        Client?.Dispose();
        if (!_process.HasExited)
        {
            _process.Kill(entireProcessTree: true);
            await _process.WaitForExitAsync();
        }

        _process.Dispose();
    }

    /// <summary>The folder of the solution.</summary>
    public static string Root()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Lugwork.slnx")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("the tests do not run inside the clone");
    }

    private void Heard(string? line)
    {
        if (line is null)
        {
            // Both of its streams have to end before all is heard.
            if (Interlocked.Increment(ref _ended) < 2)
            {
                return;
            }

            _listening.TrySetException(new InvalidOperationException("the shop ended:\n" + Said));
            return;
        }

        lock (_said)
        {
            _said.AppendLine(line);
        }

        if (Listening().Match(line) is { Success: true } match)
        {
            _listening.TrySetResult(new(match.Groups[1].Value));
        }
    }

    [GeneratedRegex("Now listening on: (http://127.0.0.1:[0-9]+)")]
    private static partial Regex Listening();
}
