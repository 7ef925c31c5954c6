using StudioKit.Field.Log;

namespace StudioKit.Field.Tests.Log;

public sealed class SessionOfTheDayTests
{
    private static readonly DateTimeOffset Now = new(2026, 5, 9, 18, 0, 0, TimeSpan.Zero);

    [Fact]
    public void The_session_that_began_last_today_is_meant() =>
        SessionOfTheDay.Of([At("morning", Now.AddHours(-10)), At("evening", Now.AddHours(-1)), At("yesterday", Now.AddHours(-30))], Now)!.Name.Should().Be("evening");

    [Fact]
    public void A_night_goes_on_after_midnight()
    {
        var night = At("night", Now.AddHours(3));

        SessionOfTheDay.Of([night], Now.AddHours(10)).Should().Be(night);
        SessionOfTheDay.Of([night with { End = Now.AddHours(8) }], Now.AddHours(30)).Should().BeNull();
        SessionOfTheDay.Of([night], Now.AddHours(31)).Should().BeNull("nobody is out for more than a day");
    }

    [Fact]
    public void A_day_without_hours_is_today_while_the_calendar_says_so()
    {
        var day = At("day", Now) with { Start = FieldDate.OfDay(new DateOnly(2026, 5, 9)) };

        SessionOfTheDay.Of([day], Now).Should().Be(day);
        SessionOfTheDay.Of([day], Now.AddDays(1)).Should().BeNull();
        SessionOfTheDay.Of([day with { End = FieldDate.OfDay(new DateOnly(2026, 5, 10)) }], Now.AddDays(1)).Should().NotBeNull();
    }

    [Fact]
    public void What_day_it_is_is_asked_of_the_sessions_own_clock()
    {
        // 11:00 on the tenth where the session is, 18:00 on the ninth where the computer stands.
        var there = TimeSpan.FromHours(13);
        var session = At("there", new DateTimeOffset(2026, 5, 10, 9, 0, 0, there)) with { End = new DateTimeOffset(2026, 5, 10, 10, 0, 0, there) };

        SessionOfTheDay.Of([session], new DateTimeOffset(2026, 5, 9, 22, 0, 0, TimeSpan.Zero)).Should().Be(session);
        SessionOfTheDay.Of([session], new DateTimeOffset(2026, 5, 10, 12, 0, 0, TimeSpan.Zero)).Should().BeNull("there it is the eleventh");
    }

    private static FieldSession At(string name, DateTimeOffset start) => new() { Id = name, Name = name, Start = start };
}
