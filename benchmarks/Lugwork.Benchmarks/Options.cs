namespace Lugwork.Benchmarks;

/// <summary>What the command line asks for.</summary>
internal sealed record Options(Effort Effort, string? Row, bool ProveOnly)
{
    public const string Usage = "usage: dotnet run -c Release --project benchmarks/Lugwork.Benchmarks [-- [--full] [--prove] [--row NUMBER]]";

    public static bool TryRead(ReadOnlySpan<string> args, out Options options)
    {
        options = new(Effort.Short, null, false);
        while (!args.IsEmpty)
        {
            switch (args)
            {
                case ["--full", ..]:
                    options = options with { Effort = Effort.Full };
                    args = args[1..];
                    break;
                case ["--prove", ..]:
                    options = options with { ProveOnly = true };
                    args = args[1..];
                    break;
                case ["--row", var row, ..]:
                    options = options with { Row = row };
                    args = args[2..];
                    break;
                default:
                    return false;
            }
        }

        return true;
    }

    public bool Wants(IRow row) => Row is null || row.Claims.Any(c => c.Number == Row);

    public bool Wants(Claim claim) => Row is null || claim.Number == Row;
}
