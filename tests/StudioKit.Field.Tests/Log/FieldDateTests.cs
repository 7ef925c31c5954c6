using System.Globalization;
using StudioKit.Field.Log;

namespace StudioKit.Field.Tests.Log;

/// <summary>The forms are those of ISO 8601-1 that Darwin Core recommends for eventDate.</summary>
public sealed class FieldDateTests
{
    [Theory]
    [InlineData("2026-05-09", "2026-05-09")]
    [InlineData("2026-05-09T14:00", "2026-05-09T14:00:00+01:00")]
    [InlineData("2026-05-09T14:00:30", "2026-05-09T14:00:30+01:00")]
    [InlineData("2026-05-09 14:00", "2026-05-09T14:00:00+01:00")]
    [InlineData("2026-05-09T14:00-03:30", "2026-05-09T14:00:00-03:30")]
    [InlineData("2026-05-09T14:00Z", "2026-05-09T14:00:00+00:00")]
    [InlineData("2026-05-09T14:00:00.25+01:00", "2026-05-09T14:00:00.25+01:00")]
    public void A_date_is_read_as_it_is_written_and_a_day_gets_no_hour(string text, string said)
    {
        FieldDate.TryRead(text, _ => TimeSpan.FromHours(1), out var date).Should().BeTrue();

        date.ToString().Should().Be(said);
        (date.Moment is null).Should().Be(text.Length == 10);
    }

    [Theory]
    [InlineData("")]
    [InlineData("2026-02-30")]
    [InlineData("09.05.2026")]
    [InlineData("2026-05-09T25:00")]
    [InlineData("2026-05-09T14:00+99:00")]
    [InlineData("0001-01-01T00:00+14:00")]
    public void What_is_no_date_is_refused(string text) => FieldDate.TryRead(text, _ => TimeSpan.Zero, out _).Should().BeFalse();

    [Fact]
    public void Every_moment_comes_back_from_its_own_text() =>
        Gen.Select(Gen.Long[TimeSpan.TicksPerDay, DateTime.MaxValue.Ticks - TimeSpan.TicksPerDay], Gen.Int[-14 * 60, 14 * 60]).Sample((ticks, minutes) =>
        {
            var moment = new DateTimeOffset(ticks, TimeSpan.FromMinutes(minutes));
            return FieldDate.TryRead(((FieldDate)moment).ToString(), _ => TimeSpan.Zero, out var date) && date.Moment!.Value.EqualsExact(moment);
        });

    [Theory]
    [InlineData("2026-05-09", "2026-05-09T00:00:01Z", false)]
    [InlineData("2026-05-10", "2026-05-09T11:00:00Z", false)] // The tenth has begun on the islands 14 hours ahead.
    [InlineData("2026-05-10", "2026-05-09T09:00:00Z", true)]
    [InlineData("2026-05-09T15:00:00+01:00", "2026-05-09T14:00:00Z", false)]
    [InlineData("2026-05-09T15:00:01+01:00", "2026-05-09T14:00:00Z", true)]
    public void A_day_lies_ahead_only_where_it_has_begun_nowhere_on_Earth(string date, string now, bool ahead)
    {
        FieldDate.TryRead(date, _ => TimeSpan.Zero, out var read).Should().BeTrue();

        read.IsAfter(DateTimeOffset.Parse(now, CultureInfo.InvariantCulture)).Should().Be(ahead);
    }
}
