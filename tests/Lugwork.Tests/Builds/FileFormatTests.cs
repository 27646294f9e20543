using System.Collections.Immutable;
using System.Text.Json;
using Lugwork.Workshop;

namespace Lugwork.Tests.Builds;

/// <summary>What stands in front of every file: the number of its format.</summary>
public sealed class FileFormatTests
{
    private static readonly Build Bicycle = Build.From(Frame.Read("seat tube 27.2")).With(Seatpost.Read("27.2 x 350"));

    [Fact]
    public void All_four_files_are_written_with_the_number()
    {
        WorkRecord record = WorkRecord.For(Bicycle.WorkPlan());
        Assert.All([BuildFile.Write(Bicycle), Bicycle.Check().ToJson(), Bicycle.WorkPlan().ToJson(), WorkRecordFile.Write(record)], text =>
        {
            using JsonDocument json = JsonDocument.Parse(text);
            Assert.Equal("format", json.RootElement.EnumerateObject().First().Name);
            Assert.Equal(1, json.RootElement.GetProperty("format").GetInt32());
        });
    }

    [Theory]
    [InlineData("")]
    [InlineData("\"format\": 1, ")]
    [InlineData("\"format\": null, ")]
    public void With_the_number_or_without_a_file_is_read(string format)
    {
        Assert.Equal("27.2", BuildFile.Read("{" + format + "\"parts\": {\"frame\": {\"seatTube\": \"27.2\"}}}").Frame.SeatTubeBore.ToString());
        Assert.Empty(WorkRecordFile.Read("{" + format + "\"steps\": []}", Bicycle.WorkPlan()).All);
    }

    [Theory]
    [InlineData("{\"format\": 2, \"parts\": {\"frame\": {}}, \"steps\": []}")]
    [InlineData("{\"wings\": [], \"format\": 2, \"parts\": [1], \"steps\": 5}")]
    [InlineData("{\"parts\": {\"frame\": {\"wings\": {\"left\": 1}}}, \"steps\": [{\"wings\": 2}], \"format\": 99999999999}")]
    [InlineData("{\"format\": 1.5, \"parts\": {\"frame\": {}}, \"steps\": []}")]
    public void A_larger_number_is_one_problem_whatever_else_stands_there(string text)
    {
        Assert.False(BuildFile.TryRead(text, out _, out ImmutableArray<SpecProblem> build));
        Assert.Equal(("$.format", "written by a newer version of this library"), (Assert.Single(build).Where, build[0].Reason));
        Assert.False(WorkRecordFile.TryRead(text, Bicycle.WorkPlan(), out _, out ImmutableArray<SpecProblem> record));
        Assert.Equal(("$.format", "written by a newer version of this library"), (Assert.Single(record).Where, record[0].Reason));
    }

    [Theory]
    [InlineData("0")]
    [InlineData("-1")]
    [InlineData("\"1\"")]
    [InlineData("true")]
    public void What_is_no_number_of_a_format_is_refused_and_not_as_newer(string format)
    {
        Assert.False(BuildFile.TryRead("{\"format\": " + format + ", \"parts\": {\"frame\": {}}}", out _, out ImmutableArray<SpecProblem> build));
        Assert.DoesNotContain("newer", Assert.Single(build).Reason, StringComparison.Ordinal);
        Assert.False(WorkRecordFile.TryRead("{\"format\": " + format + ", \"steps\": []}", Bicycle.WorkPlan(), out _, out ImmutableArray<SpecProblem> record));
        Assert.DoesNotContain("newer", Assert.Single(record).Reason, StringComparison.Ordinal);
    }
}
