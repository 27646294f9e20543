using System.Diagnostics.CodeAnalysis;

namespace Lugwork.Notebooks;

/// <summary>The two forms in which a notebook shows what this library answers: HTML and plain text.</summary>
internal sealed class NotebookForms
{
    public const string Html = "text/html";
    public const string Plain = "text/plain";

    private readonly NotebookForm[] _forms = [new(Html, NotebookHtml.Of), new(Plain, NotebookText.Of)];

    /// <summary>The forms; asked for by name.</summary>
    public NotebookForm[] CreateTypeFormatters() => _forms;
}

/// <summary>One form of what is shown.</summary>
/// <param name="mimeType">Its kind.</param>
/// <param name="write">What is written; null where the thing is none that it knows.</param>
[DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicMethods | DynamicallyAccessedMemberTypes.PublicProperties)]
internal sealed class NotebookForm(string mimeType, Func<object, string?> write)
{
    /// <summary>"text/html" or "text/plain"; read by name.</summary>
    public string MimeType { get; } = mimeType;

    /// <summary>Writes the thing, or says that it is none that it knows; called by name.</summary>
    public bool Format(object instance, TextWriter writer)
    {
        if (write(instance) is not { } text)
        {
            return false;
        }

        writer.Write(text);
        return true;
    }
}
