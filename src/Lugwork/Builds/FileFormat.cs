using System.Text.Json;

namespace Lugwork;

/// <summary>The number in front of every file that this library writes, by which a later reader knows what it has before it.</summary>
internal static class FileFormat
{
    /// <summary>What this version writes, and the highest that it reads.</summary>
    public const int Now = 1;

    /// <summary>What is wrong with a number; null where nothing is, and where none stands there, as in files from before there was one.</summary>
    public static SpecProblem? Problem(int? format) => format switch
    {
        null or Now => null,
        > Now => Newer,
        _ => new("$.format", 0, "there is no such format", $"{Now}"),
    };

    /// <summary>The one problem of a text that could not be taken as it is, where its top says that a newer version wrote it; else null.</summary>
    public static SpecProblem? NewerThanThis(ReadOnlySpan<byte> utf8)
    {
        try
        {
            Utf8JsonReader reader = new(utf8, new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true, MaxDepth = BuildFile.MostDepth });
            reader.Read();
            while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
            {
                bool isFormat = reader.ValueTextEquals("format"u8);
                reader.Read();
                if (isFormat)
                {
                    return reader.TokenType == JsonTokenType.Number && reader.TryGetDecimal(out decimal format) && format > Now ? Newer : null;
                }

                reader.Skip();
            }
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException)
        {
            // No JSON up to there: that is what is to be said of it.
        }

        return null;
    }

    private static SpecProblem Newer => new("$.format", 0, "written by a newer version of this library", $"format {Now}; a newer version reads it");
}
