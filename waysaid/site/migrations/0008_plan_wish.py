from django.db import migrations, models


class Migration(migrations.Migration):

    dependencies = [
        ('waysaid_site', '0007_school_year'),
    ]

    operations = [
        migrations.AddField(
            model_name='plan',
            name='wish',
            field=models.JSONField(blank=True, default=dict),
        ),
    ]
