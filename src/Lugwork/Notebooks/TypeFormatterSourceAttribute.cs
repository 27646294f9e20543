using System.Diagnostics.CodeAnalysis;

namespace Lugwork.Notebooks;

/// <summary>Tells a notebook how it shows a type.</summary>
/// <remarks>
/// C# notebooks find this attribute by its plain name, whoever declares it, read its two properties, make a <see cref="FormatterSourceType"/> and ask it for its forms; so nothing
/// of a notebook has to be referenced. The names of the class, of its properties and of the members of <see cref="NotebookForms"/> and <see cref="NotebookForm"/> are that convention.
/// </remarks>
/// <param name="formatterSourceType">The type that makes the forms.</param>
[AttributeUsage(AttributeTargets.Class)]
internal sealed class TypeFormatterSourceAttribute([DynamicallyAccessedMembers(TypeFormatterSourceAttribute.Asked)] Type formatterSourceType) : Attribute
{
    private const DynamicallyAccessedMemberTypes Asked = DynamicallyAccessedMemberTypes.PublicParameterlessConstructor | DynamicallyAccessedMemberTypes.PublicMethods;

    /// <summary>A type with a constructor without parameters and a method CreateTypeFormatters.</summary>
    [DynamicallyAccessedMembers(Asked)]
    public Type FormatterSourceType { get; } = formatterSourceType;

    /// <summary>The forms that a notebook shows when nothing else is asked for.</summary>
    public string[] PreferredMimeTypes { get; } = [NotebookForms.Html, NotebookForms.Plain];
}
