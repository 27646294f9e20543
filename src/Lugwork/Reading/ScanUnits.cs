namespace Lugwork.Reading;

/// <summary>Figures that say again in another unit what was read.</summary>
internal sealed partial class LineScan
{
    /// <summary>6.3 in beside 160 mm: the same length in the other unit.</summary>
    private bool IsInchesOfRead(int i)
    {
        decimal millimetres = _items[i].IsInch ? _items[i].Value * 25.4m : _items[i].Value;
        foreach ((decimal value, _) in ReadFigures)
        {
            if (_items[i].IsInch && millimetres > 0 && value > 10 && Math.Abs((value / millimetres) - 1) < 0.015m)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>28.6 beside 1-1/8 in: the same size in the other unit.</summary>
    private bool IsMillimetresOfRead(int i)
    {
        if (!_items[i].IsMillimetre || _items[i].IsFraction || _items[i].Value is < 20 or > 60)
        {
            return false;
        }

        foreach ((decimal value, _) in ReadFigures)
        {
            if (value is >= 0.7m and < 2.5m && Math.Abs((value * 25.4m) - _items[i].Value) < 0.5m)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>34.9, 36.75: the length of the body that was read.</summary>
    private bool IsLengthOfBody(int i) =>
        _items[i].IsMillimetre && _items[i].Value is 31 or 34.9m or 34.95m or 35 or 36.75m or 36.9m or 38.6m && Values.TryGetValue("body", out LineFinding? body) && body.Key.StartsWith("HG", StringComparison.Ordinal) && !Joins(i);

    /// <summary>8.5 x 2.5 in beside 216x63: both figures are of inches.</summary>
    private bool IsInchPairOfRead(int i)
    {
        bool first = i + 2 < _items.Count && _items[i + 1].IsSign('x') && _items[i + 2].IsInch;
        if (!first && !(_items[i].IsInch && i >= 2 && _items[i - 1].IsSign('x')))
        {
            return false;
        }

        foreach ((decimal value, _) in ReadFigures)
        {
            if (value > 20 && _items[i].Value > 0 && Math.Abs((value / (_items[i].Value * 25.4m)) - 1) < 0.015m)
            {
                return true;
            }
        }

        return false;
    }
}
