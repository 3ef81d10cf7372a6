namespace Orlop.Electrics.Energy;

/// <summary>The battery step by step through days, with its books.</summary>
internal sealed class StoreStep(EnergyInput input, int stepsPerHour)
{
    private readonly BatteryStore _battery = input.Battery;
    private readonly double _hours = 1.0 / stepsPerHour;
    private readonly double _in = input.Battery.ChargeFraction;
    private readonly double _out = input.Battery.DischargeFraction;

    private double _storedWh;
    private double _fullWh;
    private double _floorWh;
    private bool _takesCharge;
    private double _sun, _engine, _shore, _served, _unmet, _lost, _quick, _aged, _unused, _first;

    /// <summary>Charge of what can be drawn, 0 where cold has left nothing.</summary>
    public double ChargeFraction => Math.Max(0, (_storedWh - _floorWh) / (_fullWh - _floorWh));

    public double SunW { get; private set; }

    public double EngineW { get; private set; }

    public double ShoreW { get; private set; }

    public double UnmetWh => _unmet;

    public EnergyTotals Totals => new()
    {
        SunWh = _sun,
        EngineWh = _engine,
        ShoreWh = _shore,
        ServedWh = _served,
        UnmetWh = _unmet,
        LostWh = _lost,
        QuickWh = _quick,
        AgedWh = _aged,
        UnusedSunWh = _unused,
        StoredWh = _storedWh - _first,
    };

    /// <summary>Begins with a share of what is full on that day.</summary>
    public void Begin(int day)
    {
        BeginDay(day, 0);
        _storedWh = _first = input.StartFraction * _fullWh;
    }

    /// <summary>Begins a day: the month's cold, what has aged away since the start.</summary>
    /// <param name="day">Day of the year, from 0.</param>
    /// <param name="sinceStart">Days since the start.</param>
    public void BeginDay(int day, int sinceStart)
    {
        double air = input.Climate.AirC[EnergyCalendar.MonthOf(day)];
        _fullWh = _battery.NewWh * (_battery.LeftFraction - (_battery.LossPerYearFraction * sinceStart / EnergyCalendar.DayCount));
        _floorWh = _fullWh * (1 - _battery.Kind.UsableFractionAt(air));
        _takesCharge = air >= _battery.Kind.LeastChargeC;
        if (_storedWh > _fullWh)
        {
            _aged += _storedWh - _fullWh;
            _storedWh = _fullWh;
        }
    }

    /// <summary>One step: what is at hand feeds the loads, the sun first and the engine last; the rest charges; what is short comes from store, down to its floor.</summary>
    public void Step(double sunW, double engineW, double shoreW, double loadW)
    {
        double offered = sunW + shoreW + engineW, direct = Math.Min(loadW, offered), charging = 0, drawn = 0;
        if (offered > direct && _takesCharge)
        {
            double stored = Math.Min((offered - direct) * _hours * _in, _battery.MostStored(_storedWh, _fullWh, _hours));
            charging = stored / (_hours * _in);
            _storedWh += stored;
            _lost += (charging * _hours) - stored;
        }
        else if (loadW > direct)
        {
            double quick = _battery.QuickRatio(loadW - direct, _fullWh), taken = (loadW - direct) * _hours / _out * quick, room = Math.Max(0, _storedWh - _floorWh);
            drawn = loadW - direct;
            if (taken > room)
            {
                (taken, drawn) = (room, room / quick * _out / _hours);
                _unmet += (loadW - direct - drawn) * _hours;
            }

            _storedWh -= taken;
            _lost += (taken / quick) - (drawn * _hours);
            _quick += taken - (taken / quick);
        }

        double used = direct + charging;
        SunW = Math.Min(sunW, used);
        ShoreW = Math.Min(shoreW, used - SunW);
        EngineW = used - SunW - ShoreW;
        _sun += SunW * _hours;
        _shore += ShoreW * _hours;
        _engine += EngineW * _hours;
        _served += (direct + drawn) * _hours;
        _unused += (sunW - SunW) * _hours;
    }
}
