namespace Lugwork.Tests.Docs;

/// <summary>Under what the packages are that come with the library, or build and test it.</summary>
public sealed class LicencesTests
{
    [Fact]
    public void The_page_of_licences_is_fresh() => DocPage.Hold(LicencesPage.Committed, LicencesPage.Write());

    [Fact]
    public void Every_package_is_under_a_licence_that_goes_with_MIT()
    {
        Assert.True(LicencesPage.All.Length > 90, $"{LicencesPage.All.Length} packages");
        Assert.All(LicencesPage.All, p => Assert.True(
            LicencesPage.Free.Contains(p.Licence) || (LicencesPage.OfTestsAlone.GetValueOrDefault(p.Id) == p.Licence && p.Uses is ["tests"]),
            $"{p.Id} {p.Version} is under '{p.Licence}' and is for {string.Join(", ", p.Uses)}"));
    }

    [Fact]
    public void The_package_brings_one_other_with_it() =>
        Assert.Equal(["UnitsNet MIT-0"], LicencesPage.All.Where(p => p.Uses.Contains("package")).Select(p => $"{p.Id} {p.Licence}"));

    [Fact]
    public void The_satellite_brings_what_its_mapper_needs() =>
        Assert.All(LicencesPage.All.Where(p => p.Uses.Contains("satellite")), p => Assert.True(p.Id == "UnitsNet" || p.Id.StartsWith("Microsoft.EntityFrameworkCore", StringComparison.Ordinal) || p.Id.StartsWith("Microsoft.Extensions.", StringComparison.Ordinal), p.Id));
}
