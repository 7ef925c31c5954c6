using StudioKit.Field.Log;

namespace StudioKit.Field.Tests.Log;

/// <summary>Limits are those of the Darwin Core term list: latitude and longitude inclusive, zero no valid uncertainty (tdwg/dwc).</summary>
public sealed class LogRulesTests
{
    [Theory]
    [InlineData(90, -180)]
    [InlineData(-90, 180)]
    public void The_ends_of_the_Earth_are_places(double latitude, double longitude) =>
        LogRules.Check(LogSamples.Session with { Latitude = latitude, Longitude = longitude }, LogSamples.Now).Should().BeEmpty();

    [Theory]
    [InlineData(90.0001, 0.0, "decimalLatitude")]
    [InlineData(double.NaN, 0.0, "decimalLatitude")]
    [InlineData(0.0, -180.0001, "decimalLongitude")]
    [InlineData(0.0, null, "decimalLatitude")]
    public void A_place_off_the_Earth_is_refused_by_name(double? latitude, double? longitude, string term) =>
        Terms(LogSamples.Session with { Latitude = latitude, Longitude = longitude }).Should().Equal(term);

    [Theory]
    [InlineData(0.0)]
    [InlineData(-5.0)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void An_uncertainty_of_zero_is_refused_by_name(double uncertainty) =>
        Terms(LogSamples.Session with { CoordinateUncertainty = uncertainty }).Should().Equal("coordinateUncertaintyInMeters");

    [Fact]
    public void A_date_in_the_future_is_refused_by_name() =>
        Terms(LogSamples.Session with { Start = LogSamples.Now.AddDays(1), End = null }).Should().Equal("eventDate");

    [Fact]
    public void An_end_before_its_start_is_refused_by_name()
    {
        Terms(LogSamples.Session with { End = LogSamples.Session.Start.Moment!.Value.AddSeconds(-1) }).Should().Equal("eventDate");
        LogRules.Check(LogSamples.Subject with { HoldEnd = LogSamples.Subject.HoldStart!.Value.AddSeconds(-1) }, LogSamples.Now)
            .Should().ContainSingle().Which.Subject.Should().Be("hold end");
    }

    [Theory]
    [InlineData("Dolomedes cf. plantarius", false)]
    [InlineData("Dolomedes aff. fimbriatus", false)]
    [InlineData("Dolomedes plantarius?", false)]
    [InlineData("Dolomedes plantarius", true)]
    [InlineData("Scaffoldia minor", true)]
    public void A_scientific_name_holds_no_doubt(string name, bool sound) =>
        LogRules.Check(LogSamples.Subject with { ScientificName = name }, LogSamples.Now).Any().Should().Be(!sound);

    [Fact]
    public void All_faults_of_a_record_are_told_at_once() =>
        Terms(LogSamples.Session with { Latitude = 91, CoordinateUncertainty = 0, CountryCode = "England" })
            .Should().Equal("decimalLatitude", "coordinateUncertaintyInMeters", "countryCode");

    private static IEnumerable<string> Terms(FieldSession session) => LogRules.Check(session, LogSamples.Now).Select(fault => fault.Subject);
}
