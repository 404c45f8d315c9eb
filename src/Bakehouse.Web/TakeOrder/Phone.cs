namespace Bakehouse.Web.TakeOrder;

using PhoneNumbers;

/// <summary>Telephone numbers by the numbering plans of the ITU (E.164), as libphonenumber knows them.</summary>
public static class Phone
{
    /// <summary>
    /// The number in E.164 form, or null if it can't be one in that country by its length. A number that is not given out yet is taken:
    /// numbering plans grow, and a customer must not be sent away for it.
    /// </summary>
    /// <param name="country">ISO 3166 code, for numbers typed without a prefix.</param>
    public static string? Read(string text, string country)
    {
        var known = PhoneNumberUtil.GetInstance();
        try
        {
            var number = known.Parse(text, country);
            return known.IsPossibleNumber(number) ? known.Format(number, PhoneNumberFormat.E164) : null;
        }
        catch (NumberParseException)
        {
            return null;
        }
    }

    /// <summary>As it is dialled in that country: national at home, international from abroad.</summary>
    public static string Show(string e164, string country)
    {
        if (e164.Length == 0)
        {
            return "";
        }

        var known = PhoneNumberUtil.GetInstance();
        try
        {
            var number = known.Parse(e164, country);
            var home = known.GetRegionCodeForNumber(number) == country;
            return known.Format(number, home ? PhoneNumberFormat.NATIONAL : PhoneNumberFormat.INTERNATIONAL);
        }
        catch (NumberParseException)
        {
            return e164;
        }
    }
}
